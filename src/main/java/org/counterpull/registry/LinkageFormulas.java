package org.counterpull.registry;

import java.util.List;
import org.counterpull.fit.PinClearance;
import org.counterpull.fit.WarmBow;
import org.counterpull.linkage.CylinderForce;
import org.counterpull.linkage.HoldingForce;
import org.counterpull.linkage.LeverArm;

/** Published formulas of cylinders about hinges, and of pins in rows of bores. */
final class LinkageFormulas {
  private static final Argument PRESSURE = Argument.quantity("pressure", "MPa", "pressure");
  private static final Argument BORE = Argument.quantity("bore", "mm", "diameter of the piston");

  private LinkageFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        PublishedFormula.of(
            LeverArm.FORMULA,
            List.of(
                Argument.quantity("fixed-u", "mm", "fixed pin from the axis, first direction"),
                Argument.quantity("fixed-v", "mm", "fixed pin from the axis, second direction"),
                Argument.quantity("moving-u", "mm", "moving pin from the axis, first direction"),
                Argument.quantity("moving-v", "mm", "moving pin from the axis, second direction")),
            a ->
                LeverArm.of(
                    a.value("fixed-u"),
                    a.value("fixed-v"),
                    a.value("moving-u"),
                    a.value("moving-v"))),
        PublishedFormula.of(
            CylinderForce.PUSH,
            List.of(PRESSURE, BORE),
            a -> CylinderForce.push(a.value("pressure"), a.value("bore"))),
        PublishedFormula.of(
            CylinderForce.PULL,
            List.of(PRESSURE, BORE, Argument.quantity("rod", "mm", "diameter of the rod")),
            a -> CylinderForce.pull(a.value("pressure"), a.value("bore"), a.value("rod"))),
        PublishedFormula.of(
            HoldingForce.FORMULA,
            List.of(
                Argument.quantity("moment", "1", "moment of the weight about the axis, N mm"),
                Argument.quantity("arm", "mm", "signed lever arm of the cylinder")),
            a -> HoldingForce.of(a.value("moment"), a.value("arm"))),
        PublishedFormula.of(
            PinClearance.FORMULA,
            List.of(
                Argument.quantity("bore", "mm", "bore before welding"),
                Argument.quantity("shortened", "mm", "what welding takes off the circumference")
                    .orElse("0"),
                Argument.quantity("pin", "mm", "diameter of the pin"),
                Argument.quantity("zone", "mm", "radius of the cylinder that holds the axis")),
            a ->
                PinClearance.of(
                    a.value("bore"), a.value("shortened"), a.value("pin"), a.value("zone"))),
        PublishedFormula.of(
            WarmBow.FORMULA,
            List.of(
                Argument.quantity("clearance", "mm", "left for the pin when cold"),
                Argument.quantity("depth", "mm", "depth of the bar"),
                Argument.quantity("length", "mm", "from the first bore to the last")),
            a -> WarmBow.kelvin(a.value("clearance"), a.value("depth"), a.value("length"))));
  }
}
