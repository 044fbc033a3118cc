package org.counterpull.heat.superposed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.solve.Fineness;
import org.counterpull.heat.solve.HeatModel;
import org.counterpull.heat.solve.Probe;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.MovingSource;

/**
 * The rise that each run alone causes at each target over the time since its start, and sums of
 * these for any order.
 *
 * <p>Kept at times that grow in a geometric row, with straight lines between; beyond the last the
 * rise decays as it did at the end.
 */
public final class Responses {
  private static final double FIRST_S = 0.5;
  private static final double RATIO = 1.06;
  private static final double LEAST_RISE_K = 0.01;

  private final double ambientC;
  private final double horizonS;
  private final double[][][] riseK;
  private final double[] timesS;

  private Responses(double ambientC, double horizonS, double[] timesS, double[][][] riseK) {
    this.ambientC = ambientC;
    this.horizonS = horizonS;
    this.timesS = timesS;
    this.riseK = riseK;
  }

  /**
   * Works out all responses: one simulation for each run.
   *
   * @param full the full model; its blocks may be coarser than those of the verification
   * @param tacks links that are there before all runs
   * @param runs the runs; the response of each is that with tacks and its own weld metal laid
   * @param targets where temperatures are wanted
   * @param range temperatures for which the copy is to hold
   * @param fineness how finely time is cut
   * @param horizonS time that is followed after each start
   */
  public static Responses of(
      HeatModel full,
      List<Link> tacks,
      List<Run> runs,
      List<Target> targets,
      LinearRange range,
      Fineness fineness,
      double horizonS) {
    return of(full, tacks, runs, targets, range, fineness, horizonS, Double.POSITIVE_INFINITY);
  }

  /**
   * The same with only those blocks that a run's heat reaches.
   *
   * @param reachMm how far from its run a block may be
   */
  public static Responses of(
      HeatModel full,
      List<Link> tacks,
      List<Run> runs,
      List<Target> targets,
      LinearRange range,
      Fineness fineness,
      double horizonS,
      double reachMm) {
    double[] times = times(horizonS);
    // Each on its own, so that the cores can share them; the results do not depend on how.
    double[][][] rises =
        runs.parallelStream()
            .map(
                run -> {
                  List<Link> laid = new ArrayList<>(tacks);
                  laid.addAll(run.lays());
                  LinearCopy linear =
                      new LinearCopy(full, laid, range, b -> reaches(run, b, reachMm));
                  return alone(linear, run.source().startingAt(0), targets, fineness, times);
                })
            .toArray(double[][][]::new);
    return new Responses(full.ambientC(), times[times.length - 1], times, rises);
  }

  private static boolean reaches(Run run, Block block, double reachMm) {
    return run.source().path().points().stream().anyMatch(p -> block.distanceMm(p) <= reachMm);
  }

  private static double[] times(double horizonS) {
    int count = (int) Math.max(2, Math.ceil(Math.log(horizonS / FIRST_S) / Math.log(RATIO)) + 1);
    double[] times = new double[count];
    for (int n = 0; n < count; n++) {
      times[n] = FIRST_S * Math.pow(RATIO, n);
    }
    return times;
  }

  private static double[][] alone(
      LinearCopy linear,
      MovingSource run,
      List<Target> targets,
      Fineness fineness,
      double[] times) {
    double ambient = linear.model().ambientC();
    Simulation simulation = new Simulation(linear.model(), fineness, ambient);
    simulation.strike(run);
    List<Optional<Probe>> probes = new ArrayList<>();
    for (Target target : targets) {
      probes.add(
          Optional.ofNullable(linear.of(target.block()))
              .map(block -> simulation.probe(target.name(), block, target.point())));
    }
    simulation.advanceTo(times[times.length - 1]);
    double[] nothing = new double[times.length];
    double[][] rise = new double[targets.size()][];
    for (int t = 0; t < rise.length; t++) {
      // Most targets are out of reach of most runs; they share one row of zeros.
      boolean reached = probes.get(t).filter(p -> p.peakC() - ambient > LEAST_RISE_K).isPresent();
      rise[t] = reached ? new double[times.length] : nothing;
      for (int n = 0; reached && n < times.length; n++) {
        rise[t][n] = probes.get(t).orElseThrow().atC(times[n]) - ambient;
      }
    }
    return rise;
  }

  /** Temperature of a target at a time, for runs struck at given times; later ones do not count. */
  public double temperatureC(int target, List<Struck> order, double timeS) {
    double sum = ambientC;
    for (Struck struck : order) {
      sum += riseK(struck.run(), target, timeS - struck.startS());
    }
    return sum;
  }

  /** Rise at a target so long after the start of a run alone. */
  public double riseK(int run, int target, double sinceS) {
    double[] rise = riseK[run][target];
    if (sinceS <= 0) {
      return 0;
    }
    if (sinceS <= FIRST_S) {
      return rise[0] * sinceS / FIRST_S;
    }
    int last = timesS.length - 1;
    if (sinceS >= horizonS) {
      return decayed(rise[last - 1], rise[last], sinceS - horizonS);
    }
    int n = Math.min(last - 1, (int) (Math.log(sinceS / FIRST_S) / Math.log(RATIO)));
    double part = (sinceS - timesS[n]) / (timesS[n + 1] - timesS[n]);
    return rise[n] + part * (rise[n + 1] - rise[n]);
  }

  private double decayed(double before, double end, double beyondS) {
    int last = timesS.length - 1;
    if (!(before > end && end > 0)) {
      return end;
    }
    double rate = Math.log(before / end) / (timesS[last] - timesS[last - 1]);
    return end * Math.exp(-rate * beyondS);
  }

  /**
   * The least time from which a target stays at or under a limit, if nothing more is struck.
   *
   * @param fromS earliest time
   * @param latestS time at which the search ends
   * @return the time, to 0.01 s; {@code latestS} when the limit is not reached before
   */
  public double coolS(int target, double limitC, List<Struck> order, double fromS, double latestS) {
    double step = Math.max(0.25, (latestS - fromS) / 2000);
    double hot = Double.NaN;
    for (double t = latestS; t >= fromS; t -= step) {
      if (temperatureC(target, order, t) > limitC) {
        hot = t;
        break;
      }
    }
    if (Double.isNaN(hot)) {
      return fromS;
    }
    double cold = Math.min(latestS, hot + step);
    while (cold - hot > 0.01) {
      double middle = 0.5 * (hot + cold);
      if (temperatureC(target, order, middle) > limitC) {
        hot = middle;
      } else {
        cold = middle;
      }
    }
    return cold;
  }
}
