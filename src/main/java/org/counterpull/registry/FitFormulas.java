package org.counterpull.registry;

import java.util.List;
import org.counterpull.fit.ExtrusionGap;
import org.counterpull.fit.ThickTube;
import org.counterpull.fit.ToleranceGrade;
import org.counterpull.strength.PinnedJoint;
import org.counterpull.strength.PlateOnTube;

/** Published formulas of the package {@code fit}, and of pins and lugs of {@code strength}. */
final class FitFormulas {
  private static final Argument INSIDE = Argument.quantity("inside", "mm", "inside diameter");
  private static final Argument OUTSIDE = Argument.quantity("outside", "mm", "outside diameter");
  private static final Argument PRESSURE = Argument.quantity("pressure", "MPa", "pressure");
  private static final Argument FORCE =
      Argument.quantity("force", "N", "design force on the plate");
  private static final Argument YIELD =
      Argument.quantity("yield", "MPa", "yield strength of the plate");
  private static final Argument PIN = Argument.quantity("pin", "mm", "diameter of the pin");

  private static final Argument PLATE = Argument.quantity("plate", "mm", "thickness of the plate");

  private FitFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        PublishedFormula.of(
            ToleranceGrade.FORMULA,
            List.of(
                Argument.choice("grade", "ISO 286 grade", List.of("6", "7", "8", "9", "10", "11")),
                Argument.quantity("nominal", "mm", "nominal size")),
            a -> ToleranceGrade.of(Integer.parseInt(a.text("grade")), a.value("nominal"))),
        PublishedFormula.of(
            ThickTube.GROWTH,
            List.of(INSIDE, OUTSIDE, PRESSURE),
            a -> ThickTube.growth(a.value("inside"), a.value("outside"), a.value("pressure"))),
        PublishedFormula.of(
            ThickTube.SQUEEZE,
            List.of(INSIDE, OUTSIDE, PRESSURE),
            a -> ThickTube.squeeze(a.value("inside"), a.value("outside"), a.value("pressure"))),
        PublishedFormula.of(
            ThickTube.HOOP,
            List.of(INSIDE, OUTSIDE, PRESSURE),
            a -> ThickTube.hoop(a.value("inside"), a.value("outside"), a.value("pressure"))),
        PublishedFormula.of(
            ExtrusionGap.FORMULA,
            List.of(PRESSURE, Argument.quantity("shore", "1", "Shore A of the ring").orElse("70")),
            a -> ExtrusionGap.of(a.value("pressure"), a.value("shore"))),
        PublishedFormula.of(
            PlateOnTube.PULL,
            List.of(
                OUTSIDE,
                Argument.quantity("wall", "mm", "wall of the tube"),
                Argument.quantity("length", "mm", "length of the plate along the tube"),
                YIELD),
            a ->
                PlateOnTube.pull(
                    a.value("outside"), a.value("wall"), a.value("length"), a.value("yield"))),
        PublishedFormula.of(
            PinnedJoint.COMBINED, pinArguments(), a -> pin(a).combined(a.value("force"))),
        PublishedFormula.of(
            PinnedJoint.BEYOND,
            plateArguments(),
            a -> plate(a).beyondHole(a.value("force"), a.value("plate"))),
        PublishedFormula.of(
            PinnedJoint.BESIDE,
            plateArguments(),
            a -> plate(a).besideHole(a.value("force"), a.value("plate"))),
        PublishedFormula.of(
            PinnedJoint.BEARING,
            List.of(PIN, PLATE, YIELD),
            a ->
                new PinnedJoint(
                        a.value("pin"),
                        a.value("pin"),
                        1,
                        1,
                        0,
                        1,
                        a.value("yield"),
                        a.value("yield"))
                    .bearing(a.value("plate"))),
        PublishedFormula.of(
            PinnedJoint.BENDING,
            List.of(PIN, Argument.quantity("pin-yield", "MPa", "yield strength of the pin")),
            a ->
                new PinnedJoint(a.value("pin"), a.value("pin"), 1, 1, 0, 1, a.value("pin-yield"), 1)
                    .bending()),
        PublishedFormula.of(
            PinnedJoint.SHEAR,
            List.of(PIN, Argument.quantity("pin-tensile", "MPa", "tensile strength of the pin")),
            a ->
                new PinnedJoint(
                        a.value("pin"), a.value("pin"), 1, 1, 0, a.value("pin-tensile"), 1, 1)
                    .shear()));
  }

  private static List<Argument> pinArguments() {
    return List.of(
        PIN,
        Argument.quantity("hole", "mm", "diameter of the hole"),
        Argument.quantity("middle", "mm", "thickness of the middle plate"),
        Argument.quantity("outer", "mm", "thickness of each outer plate"),
        Argument.quantity("gap", "mm", "between middle and outer plate").orElse("0"),
        Argument.quantity("pin-tensile", "MPa", "tensile strength of the pin"),
        Argument.quantity("pin-yield", "MPa", "yield strength of the pin"),
        YIELD,
        FORCE);
  }

  private static List<Argument> plateArguments() {
    return List.of(Argument.quantity("hole", "mm", "diameter of the hole"), PLATE, YIELD, FORCE);
  }

  private static PinnedJoint plate(Arguments a) {
    return new PinnedJoint(
        a.value("hole"), a.value("hole"), 1, 1, 0, 1, a.value("yield"), a.value("yield"));
  }

  private static PinnedJoint pin(Arguments a) {
    return new PinnedJoint(
        a.value("pin"),
        a.value("hole"),
        a.value("middle"),
        a.value("outer"),
        a.value("gap"),
        a.value("pin-tensile"),
        a.value("pin-yield"),
        a.value("yield"));
  }
}
