package org.counterpull.pull;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** What the kernel gives for the cases of the book of verification, by name. */
public final class ShapeCases {
  private ShapeCases() {}

  /** All cases. */
  public static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    return Map.ofEntries(
        Map.entry("three welds on a rigid bar", ShapeCases::threeWelds),
        Map.entry("tip, running along over ends first", ShapeCases::alongOverEndsFirst),
        Map.entry("spread of the six orders", a -> RigidBarCase.spreadOfOrders(of(a, "tack"))),
        Map.entry("girder", ShapeCases::girder),
        Map.entry("cantilever", ShapeCases::cantilever),
        Map.entry("portal over formula", a -> BeamTextbookTest.portalSway()),
        Map.entry("angle under skew load over formula", a -> angleOverFormula()),
        Map.entry("curved bar over exact", a -> BeamTextbookTest.curvedBar((int) of(a, "pieces"))),
        Map.entry("square plate", a -> ShellTest.squarePlateCoefficient()),
        Map.entry("tube of shells over beam", a -> ShellTest.tubeOverBeam()),
        Map.entry("condensed over full", a -> ShellTest.condensedOverFull()),
        Map.entry("births against anew", a -> BirthAgainstAnewTest.births((long) of(a, "seed"))),
        Map.entry(
            "removals against anew",
            a -> BirthAgainstAnewTest.removals((long) of(a, "seed"), of(a, "ratio"))),
        Map.entry(
            "change with the supports",
            a -> BirthAgainstAnewTest.otherSupports((int) of(a, "node"))),
        Map.entry(
            "change with the pose",
            a ->
                BirthAgainstAnewTest.inPose(
                    a.get("pose").equals("turned")
                        ? BirthAgainstAnewTest.TURNED
                        : BirthAgainstAnewTest.MIRRORED)));
  }

  private static double of(Map<String, String> arguments, String name) {
    return Double.parseDouble(arguments.get(name));
  }

  private static double threeWelds(Map<String, String> a) {
    RigidBarCase bar = RigidBarCase.welded(a.get("order"), (int) of(a, "after"), 0.05);
    return a.get("asked").equals("u") ? bar.rise() : bar.tip();
  }

  private static double alongOverEndsFirst(Map<String, String> a) {
    return Math.abs(RigidBarCase.finalTip("123", 0.05) / RigidBarCase.finalTip("132", 0.05));
  }

  private static double girder(Map<String, String> a) {
    boolean tacked = a.get("top").equals("tacked");
    return -GirderCase.camberMm(tacked, (int) of(a, "after")) + 0.0;
  }

  private static double cantilever(Map<String, String> a) {
    double[] u =
        BeamTextbookTest.tip(
            BeamTextbookTest.bar(700, 7, SectionShapes.rectangle(30, 60)),
            7,
            new Vector3D(0, 0, -1000),
            Vector3D.ZERO,
            0);
    return a.get("asked").equals("deflection") ? -u[2] : u[4];
  }

  /** Deflection across the load of an equal angle over F L3 Iyz / (3 E (Iy Iz - Iyz2)). */
  private static double angleOverFormula() {
    SectionStiffness s = Shapes.slender(SectionShapes.angle(50, 50, 6));
    double[] u =
        BeamTextbookTest.tip(
            BeamTextbookTest.bar(900, 3, s), 3, new Vector3D(0, 0, -500), Vector3D.ZERO, 0);
    double determinant = s.iyMm4() * s.izMm4() - s.iyzMm4() * s.iyzMm4();
    double bent = 500 * Math.pow(900, 3) * s.iyzMm4() / (3 * 206_000 * determinant);
    return (u[1] - u[3] * s.shearCentreZMm()) / bent;
  }
}
