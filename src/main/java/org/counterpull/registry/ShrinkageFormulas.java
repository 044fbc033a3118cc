package org.counterpull.registry;

import java.util.List;
import java.util.Locale;
import org.counterpull.shrinkage.BucklingStress;
import org.counterpull.shrinkage.ButtShrinkage;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.GeneralTolerance;
import org.counterpull.shrinkage.GirthShrinkage;
import org.counterpull.shrinkage.RestrainedShrinkage;
import org.counterpull.shrinkage.TendonForce;
import org.counterpull.shrinkage.WeldCamber;

/** Published formulas of the package {@code shrinkage}, with the constants of carbon steel. */
final class ShrinkageFormulas {
  private static final Argument NET_HEAT =
      Argument.quantity("net-heat-input", "J/mm", "net heat per length");
  private static final Argument THICKNESS = Argument.quantity("thickness", "mm", "plate thickness");
  private static final Argument WELD_AREA =
      Argument.quantity("weld-area", "mm2", "deposited cross-section");

  private ShrinkageFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        PublishedFormula.of(
            TendonForce.FORMULA, List.of(NET_HEAT), a -> TendonForce.of(a.value("net-heat-input"))),
        PublishedFormula.of(
            FreeAngle.FORMULA,
            List.of(NET_HEAT, THICKNESS),
            a -> FreeAngle.of(a.value("net-heat-input"), a.value("thickness"))),
        PublishedFormula.of(
            FreeShrinkage.FORMULA,
            List.of(NET_HEAT, THICKNESS),
            a -> FreeShrinkage.of(a.value("net-heat-input"), a.value("thickness"))),
        butt(true),
        butt(false),
        PublishedFormula.of(
            RestrainedShrinkage.FORMULA,
            List.of(
                Argument.quantity(
                    "restraint", "kgf/mm2/mm", "mean transverse stress for 1 mm of closure")),
            a -> RestrainedShrinkage.of(a.value("restraint"))),
        camber(),
        PublishedFormula.of(
            GirthShrinkage.FORMULA,
            List.of(NET_HEAT, Argument.quantity("radius", "mm", "mean radius"), THICKNESS),
            a ->
                GirthShrinkage.of(
                    a.value("net-heat-input"), a.value("radius"), a.value("thickness"))),
        PublishedFormula.of(
            BucklingStress.FORMULA,
            List.of(
                Argument.quantity("coefficient", "1", "buckling coefficient k of the edges"),
                THICKNESS,
                Argument.quantity("width", "mm", "loaded width")),
            a -> BucklingStress.of(a.value("coefficient"), a.value("thickness"), a.value("width"))),
        tolerance());
  }

  private static PublishedFormula butt(boolean high) {
    return PublishedFormula.of(
        high ? ButtShrinkage.HIGH : ButtShrinkage.LOW,
        List.of(WELD_AREA, THICKNESS, Argument.quantity("gap", "mm", "root opening").orElse("0")),
        a ->
            high
                ? ButtShrinkage.high(a.value("weld-area"), a.value("thickness"), a.value("gap"))
                : ButtShrinkage.low(a.value("weld-area"), a.value("thickness"), a.value("gap")));
  }

  private static PublishedFormula camber() {
    return PublishedFormula.of(
        WeldCamber.FORMULA,
        List.of(
            WELD_AREA,
            Argument.quantity("distance", "mm", "weld to neutral axis"),
            Argument.quantity("length", "mm", "length of the member"),
            Argument.quantity("inertia", "mm4", "second moment of area")),
        a ->
            WeldCamber.of(
                a.value("weld-area"), a.value("distance"), a.value("length"), a.value("inertia")));
  }

  private static PublishedFormula tolerance() {
    return PublishedFormula.of(
        GeneralTolerance.LENGTH,
        List.of(
            Argument.choice(
                "class", "ISO 13920 class", List.of("A", "B", "C", "D", "E", "F", "G", "H")),
            Argument.quantity("length", "mm", "nominal length, or the shorter leg of an angle"),
            Argument.choice(
                "kind",
                "what is toleranced; an angle is answered in minutes",
                List.of("linear", "angular", "straight"))),
        a ->
            GeneralTolerance.of(
                a.text("class"),
                a.value("length"),
                GeneralTolerance.Kind.named(a.text("kind").toLowerCase(Locale.ROOT))));
  }
}
