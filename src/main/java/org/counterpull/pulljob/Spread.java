package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.counterpull.calibration.FactorBand;
import org.counterpull.weldment.Weldment;

/**
 * How far checks may come out, when the figures are only known within their bands.
 *
 * <p>A method that is wrong is wrong for every run alike: one factor for each {@link Effect},
 * log-normal, nine of ten within its band, published or measured by the shop. Besides, each run
 * scatters by 12 % on its own (six welded tees, P. Ferro et al., Procedia Structural Integrity 33,
 * 2021). Drawn with a fixed seed.
 */
final class Spread {
  private static final int DRAWS = 1000;
  private static final double FIVE_PERCENT_AT = 1.645;
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;
  private static final double MIDDLE = 0.5;

  private final double[][][] factors;

  /** Draws for a model; the same for every order, so that orders can be compared. */
  Spread(long seed, Weldment weldment, PullModel model) {
    Random random = new Random(seed);
    Effect[] effects = Effect.values();
    int runs = model.runs().size();
    double[][] logs = new double[runs][effects.length];
    for (int r = 0; r < runs; r++) {
      boolean given = model.amounts().get(r).basis() == Amounts.Basis.GIVEN;
      for (int e = 0; e < effects.length && !given; e++) {
        FactorBand band = weldment.factor(model.runs().get(r).process(), effects[e].calibrated());
        logs[r][e] = Math.log(band.within()) / FIVE_PERCENT_AT;
      }
    }
    factors = new double[DRAWS][runs][effects.length];
    for (int d = 0; d < DRAWS; d++) {
      double[] method = new double[effects.length];
      for (int e = 0; e < effects.length; e++) {
        method[e] = random.nextGaussian();
      }
      for (int r = 0; r < runs; r++) {
        double scatter = 1 + FactorBand.RUN_SCATTER * random.nextGaussian();
        for (int e = 0; e < effects.length; e++) {
          factors[d][r][e] = scatter * Math.exp(logs[r][e] * method[e]);
        }
      }
    }
  }

  /**
   * A check's number.
   *
   * @param expected half of all come out below it
   * @param low one of twenty comes out below it
   * @param high one of twenty comes out above it
   * @param central with every figure as published
   */
  record Band(double expected, double low, double high, double central) {}

  /** Bands of all checks. */
  List<Band> bands(List<Measure> measures, double[][][] shares) {
    return bands(measures, shares, new double[shares.length]);
  }

  /** The same where parts are set off by as much as they are expected to move. */
  List<Band> bandsWithPresets(List<Measure> measures, double[][][] shares) {
    double[] central = Welded.readings(shares);
    return bands(measures, shares, Arrays.stream(central).map(c -> -c).toArray());
  }

  private List<Band> bands(List<Measure> measures, double[][][] shares, double[] setOff) {
    double[][] values = new double[measures.size()][DRAWS];
    for (int d = 0; d < DRAWS; d++) {
      double[] drawn = drawn(shares, d);
      for (int i = 0; i < drawn.length; i++) {
        drawn[i] += setOff[i];
      }
      int first = 0;
      for (int m = 0; m < measures.size(); m++) {
        values[m][d] = measures.get(m).value(drawn, first);
        first += measures.get(m).readings();
      }
    }
    double[] central = Welded.readings(shares);
    List<Band> bands = new ArrayList<>();
    int first = 0;
    for (int m = 0; m < measures.size(); m++) {
      Arrays.sort(values[m]);
      bands.add(
          new Band(
              at(values[m], MIDDLE),
              at(values[m], LOW),
              at(values[m], HIGH),
              measures.get(m).value(central, first)));
      first += measures.get(m).readings();
    }
    return bands;
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.round(share * (sorted.length - 1))];
  }

  private double[] drawn(double[][][] shares, int draw) {
    double[] readings = new double[shares.length];
    for (int reading = 0; reading < shares.length; reading++) {
      double sum = 0;
      for (int run = 0; run < shares[reading].length; run++) {
        for (int effect = 0; effect < shares[reading][run].length; effect++) {
          sum += shares[reading][run][effect] * factors[draw][run][effect];
        }
      }
      readings[reading] = sum;
    }
    return readings;
  }
}
