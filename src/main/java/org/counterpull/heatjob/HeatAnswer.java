package org.counterpull.heatjob;

import java.util.List;
import java.util.Optional;
import org.counterpull.heat.solve.EnergyBalance;

/**
 * How warm it got.
 *
 * @param weldment what it is called
 * @param order {@code plan} or {@code written}
 * @param resolution how finely it was worked out
 * @param ambientC air and cold metal
 * @param traces temperatures over time at probes, features and starts of runs
 * @param starts how warm the metal was when each pass began
 * @param peaks peak temperatures around each run, in the order of welding
 * @param balance where the heat went
 * @param cells of metal
 * @param steps in time
 * @param endS simulated time
 * @param notes what was assumed or left out, in sentences
 */
public record HeatAnswer(
    String weldment,
    String order,
    Resolution resolution,
    double ambientC,
    List<Trace> traces,
    List<Start> starts,
    List<PeakField> peaks,
    EnergyBalance balance,
    int cells,
    int steps,
    double endS,
    List<String> notes) {

  public HeatAnswer {
    traces = List.copyOf(traces);
    starts = List.copyOf(starts);
    peaks = List.copyOf(peaks);
    notes = List.copyOf(notes);
  }

  /** Peak temperatures around a run; empty when it was not welded. */
  public Optional<PeakField> peaksAround(String run) {
    return peaks.stream().filter(field -> field.run().equals(run)).findFirst();
  }

  /** What a temperature was noted for. */
  public enum Kind {
    PROBE,
    FEATURE,
    RUN_START;

    /** The words used in outputs. */
    public String words() {
      return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
  }

  /**
   * A temperature over time.
   *
   * @param name of the probe, feature or run
   * @param kind which of these
   * @param limitC highest allowed; empty for none
   * @param history what was noted
   */
  public record Trace(String name, Kind kind, Optional<Double> limitC, History history) {
    /** Whether it got warmer than it may. */
    public boolean overLimit() {
      return limitC.filter(limit -> history.peakC() > limit).isPresent();
    }
  }

  /**
   * The metal along a run's line when one of its passes began.
   *
   * @param run name of the run
   * @param pass from 1
   * @param startS from the beginning
   * @param hottestC along the line
   * @param coolestC along the line
   * @param preheatC least temperature wanted; empty for none and for later passes
   * @param interpassMaxC highest temperature allowed; empty for none
   */
  public record Start(
      String run,
      int pass,
      double startS,
      double hottestC,
      double coolestC,
      Optional<Double> preheatC,
      Optional<Double> interpassMaxC) {

    /** Whether the metal was too warm for the next pass. */
    public boolean tooWarm() {
      return interpassMaxC.filter(limit -> hottestC > limit).isPresent();
    }

    /** Whether the metal was colder than it must be. */
    public boolean tooCold() {
      return preheatC.filter(least -> coolestC < least).isPresent();
    }
  }
}
