package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.counterpull.shrinkage.ErrorBand;

/**
 * How far checks may come out, when the figures are only known within their bands.
 *
 * <p>A method that is wrong is wrong for every run alike: one factor for each {@link Effect},
 * log-normal, nine of ten within its band. Besides, each run scatters by 12 % on its own (six
 * welded tees, P. Ferro et al., Procedia Structural Integrity 33, 2021). Drawn with a fixed seed.
 */
final class Spread {
  private static final int DRAWS = 1000;
  private static final double SCATTER = 0.12;
  private static final double FIVE_PERCENT_AT = 1.645;
  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;
  private static final double MIDDLE = 0.5;

  private final double[][] factors;
  private final double[][] scatters;

  /** Draws for that many runs; the same for every order, so that orders can be compared. */
  Spread(long seed, int runs) {
    Random random = new Random(seed);
    Effect[] effects = Effect.values();
    factors = new double[DRAWS][effects.length];
    scatters = new double[DRAWS][runs];
    for (int d = 0; d < DRAWS; d++) {
      for (int e = 0; e < effects.length; e++) {
        ErrorBand band = effects[e].band();
        double z = random.nextGaussian();
        double side = z > 0 ? Math.log(band.highFactor()) : -Math.log(band.lowFactor());
        factors[d][e] = Math.exp(z * side / FIVE_PERCENT_AT);
      }
      for (int r = 0; r < runs; r++) {
        scatters[d][r] = 1 + SCATTER * random.nextGaussian();
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
        double ofRun = 0;
        for (int effect = 0; effect < factors[draw].length; effect++) {
          ofRun += shares[reading][run][effect] * factors[draw][effect];
        }
        sum += ofRun * scatters[draw][run];
      }
      readings[reading] = sum;
    }
    return readings;
  }
}
