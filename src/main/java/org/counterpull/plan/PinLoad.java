package org.counterpull.plan;

import java.util.List;

/**
 * What a pin and the lugs round it carry, by EN 1993-1-8, 3.13.
 *
 * @param by what loads it, in words
 * @param forceN working load on the pin
 * @param designN the load that is checked
 * @param middleMm plate between the others
 * @param outerMm each outer plate
 * @param gapMm between them
 * @param weldLoadN what the file lets the welds of these lugs carry together, 0 when it says of
 *     none
 * @param uses of pin and plates, and what they may carry
 * @param assumed what was taken for the pin and for what hangs on it, in sentences
 */
public record PinLoad(
    String by,
    double forceN,
    double designN,
    double middleMm,
    double outerMm,
    double gapMm,
    double weldLoadN,
    List<Use> uses,
    List<String> assumed) {
  public PinLoad {
    uses = List.copyOf(uses);
    assumed = List.copyOf(assumed);
  }

  /**
   * A use.
   *
   * @param what is used
   * @param load what it has to carry, or the metal that is wanted
   * @param allowed what it may carry, or the metal that is there
   * @param unit of both
   * @param source the rule
   */
  public record Use(String what, double load, double allowed, String unit, String source) {
    /** Above 1 it is overloaded. */
    public double share() {
      return allowed > 0 ? load / allowed : Double.POSITIVE_INFINITY;
    }
  }

  /** True where pin or plate is overloaded. */
  public boolean tooWeak() {
    return uses.stream().anyMatch(u -> u.share() > 1);
  }

  /** True where the welds of the lugs are planned for less than the pin can bring. */
  public boolean weldsPlannedForLess() {
    return weldLoadN < forceN - 1;
  }
}
