package org.counterpull.plan;

import java.util.List;
import java.util.Optional;

/**
 * How warm the work gets while the plan is carried out, by the full heat model.
 *
 * @param resolution how finely it was worked out
 * @param cells of metal
 * @param steps in time
 * @param imbalance share of the heat that is neither stored nor lost
 * @param starts of all passes, in the order of welding
 * @param spots features and starts of runs, with their temperatures over time
 * @param notes what was assumed or left out, in sentences
 */
public record PlanHeat(
    String resolution,
    int cells,
    int steps,
    double imbalance,
    List<PassStart> starts,
    List<Spot> spots,
    List<String> notes) {

  public PlanHeat {
    starts = List.copyOf(starts);
    spots = List.copyOf(spots);
    notes = List.copyOf(notes);
  }

  /**
   * The metal along a run's line when a pass begins.
   *
   * @param run name of the run
   * @param pass from 1
   * @param startS from the beginning of the job
   * @param hottestC along the line
   * @param coolestC along the line
   * @param preheatC least temperature wanted; empty for none
   * @param interpassMaxC highest allowed
   * @param waitS least wait for the metal in the full model
   * @param superposedS the same in the superposed model, at the same moment
   */
  public record PassStart(
      String run,
      int pass,
      double startS,
      double hottestC,
      double coolestC,
      Optional<Double> preheatC,
      double interpassMaxC,
      double waitS,
      double superposedS) {

    /** Whether the metal was too warm. */
    public boolean tooWarm() {
      return hottestC > interpassMaxC;
    }

    /** Whether the metal was colder than it must be. */
    public boolean tooCold() {
      return preheatC.filter(least -> coolestC < least).isPresent();
    }
  }

  /**
   * A place and its temperatures.
   *
   * @param name of the feature or run
   * @param feature true for features, false for starts of runs
   * @param limitC highest allowed; empty for none
   * @param takenOut true when the thing that has the limit is out while welding goes on
   * @param peakC highest
   * @param peakS when
   * @param aboveS time spent above the limit
   * @param advice what to do about a peak over the limit, in sentences
   * @param timesS when temperatures were noted, thinned
   * @param tempsC the temperatures
   */
  public record Spot(
      String name,
      boolean feature,
      Optional<Double> limitC,
      boolean takenOut,
      double peakC,
      double peakS,
      double aboveS,
      List<String> advice,
      List<Double> timesS,
      List<Double> tempsC) {

    public Spot {
      advice = List.copyOf(advice);
      timesS = List.copyOf(timesS);
      tempsC = List.copyOf(tempsC);
    }

    /** Whether it got warmer than it may. */
    public boolean overLimit() {
      return limitC.filter(limit -> peakC > limit).isPresent();
    }
  }
}
