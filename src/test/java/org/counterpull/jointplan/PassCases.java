package org.counterpull.jointplan;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.counterpull.feeding.BeadArea;
import org.counterpull.feeding.BurnOff;
import org.counterpull.groove.GrooveSide;
import org.counterpull.jointplan.PassPlan.Kind;

/** Fill levels and pass counts for the book of verification. */
public final class PassCases {
  /** The worked V: 60 degrees, 10 mm, gap 2, root face 1.5. */
  private static final GrooveSide V10 = new GrooveSide(2, 1.5, 8.5, Math.toRadians(30), 2, 0);

  private static final double YIELD = 0.95;

  private PassCases() {}

  /** By the names that the data file uses. */
  public static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    return Map.of(
        "bead of 1.0 mm wire", a -> bead(of(a, "current"), of(a, "travel")),
        "fill level", a -> V10.levelMm(root() + of(a, "fills") * fill()),
        "passes of the worked V", a -> passesOfTheV(),
        "passes of a fillet", PassCases::passesOfAFillet,
        "first side's share", PassCases::firstShare);
  }

  private static double of(Map<String, String> arguments, String name) {
    return Double.parseDouble(arguments.get(name));
  }

  private static double bead(double currentA, double travelMmPerS) {
    double feed = BurnOff.mmPerS(1.0, currentA, 12);
    return BeadArea.ofWire(feed, 1.0, YIELD, travelMmPerS).value();
  }

  private static double root() {
    return bead(130, 3.5);
  }

  private static double fill() {
    return bead(200, 5);
  }

  private static double passesOfTheV() {
    BeadLimits limits = new BeadLimits(6, fill(), 3, 4.9, 12);
    BeadLimits rootLimits = new BeadLimits(6, root(), 3, 4.9, 12);
    return BeadLayout.openGroove(V10, 11.81, limits, rootLimits).size();
  }

  private static double passesOfAFillet(Map<String, String> a) {
    double leg = of(a, "leg");
    BeadLimits limits = new BeadLimits(20, of(a, "bead"), 3, 3, 8);
    return BeadLayout.fillet(1.21 * leg * leg / 2, limits).stream()
        .filter(bead -> bead.kind() != Kind.SEALING)
        .count();
  }

  /** Of a 60 degree X with gap 2 that the planner balances, deposit of both sides with caps. */
  private static double firstShare(Map<String, String> a) {
    org.counterpull.groove.Groove even =
        org.counterpull.groove.Groove.straight(
            org.counterpull.groove.Preparation.DOUBLE_V, of(a, "thickness"), 2, 1.5, 60);
    return FirstSideShare.firstShare(
        FirstSideShare.balanced(even, WeldMetal.CAP_MM, 0), WeldMetal.CAP_MM, 0);
  }
}
