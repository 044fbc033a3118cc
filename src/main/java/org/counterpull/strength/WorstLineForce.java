package org.counterpull.strength;

import java.util.Comparator;
import java.util.List;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;

/**
 * The greatest force per length in a weld group, {@code |F/L + w x r|}.
 *
 * <p><b>Source:</b> as {@link WeldGroup}.
 *
 * <p><b>Valid for:</b> static loads on ductile welds between parts that are stiff beside them.
 */
public final class WorstLineForce {
  public static final Formula FORMULA =
      new Formula(
          "weld-line-force",
          "greatest force per length in a weld group",
          "N/mm",
          "from memory: Blodgett, Design of Welded Structures, 1966, 7.4; in space: derived");

  private WorstLineForce() {}

  /** The greatest of some forces per length. */
  public static Computed of(List<StationForce> forces) {
    return FORMULA.result(at(forces).sizeNPerMm());
  }

  /** Where it is; the first of several alike. */
  public static StationForce at(List<StationForce> forces) {
    return forces.stream()
        .max(Comparator.comparingDouble(StationForce::sizeNPerMm))
        .orElseThrow(() -> new IllegalArgumentException("there are 0 forces to compare"));
  }
}
