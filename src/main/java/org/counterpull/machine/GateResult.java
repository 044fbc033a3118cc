package org.counterpull.machine;

import java.util.List;

/**
 * What one gate says.
 *
 * @param name electrical, fusion, chill, process or layering
 * @param outcome open, open with help, or shut
 * @param figures the numbers it was judged by
 * @param why one sentence
 * @param wouldChange what would open it; empty where it is open
 */
public record GateResult(
    String name, Outcome outcome, List<Figure> figures, String why, String wouldChange) {

  /** How far a gate opens. */
  public enum Outcome {
    /** As asked, without help. */
    OPEN,
    /** With preparation, passes or preheat. */
    WITH_HELP,
    /** Only after a fused and etched test piece. */
    AFTER_TEST,
    /** Not at all. */
    SHUT
  }

  public GateResult {
    figures = List.copyOf(figures);
  }

  /** The gate is open without help. */
  public boolean passed() {
    return outcome == Outcome.OPEN;
  }

  /** A figure by its name. */
  public double figure(String figureName) {
    return figures.stream()
        .filter(figure -> figure.name().equals(figureName))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no figure '" + figureName + "'"))
        .value();
  }
}
