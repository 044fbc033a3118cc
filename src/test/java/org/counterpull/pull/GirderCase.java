package org.counterpull.pull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonForce;

/** Tee of bottom flange and web as one bar, top flange as another, fitted at thirteen stations. */
final class GirderCase {
  private static final Vector3D UP = Vector3D.PLUS_K;
  private static final double LENGTH = 6000;
  private static final double TEE_AXIS = (1500 * 5 + 2400 * 160) / 3900.0;

  private final Structure structure;
  private final int camber;
  private final List<Integer> fits = new ArrayList<>();
  private final Map<Integer, List<Integer>> tendons = new HashMap<>();

  GirderCase() {
    double zTop = 315;
    double inertia =
        150 * 1000 / 12.0
            + 1500 * Math.pow(TEE_AXIS - 5, 2)
            + 8 * 27e6 / 12
            + 2400 * Math.pow(160 - TEE_AXIS, 2);
    SectionStiffness tee = new SectionStiffness(3900, inertia, 3e6, 0, 7e4, 1250, 2400, 0, 0);
    Assembly assembly = new Assembly();
    int lower =
        assembly.body(
            BeamBody.straight(
                Shapes.line(new Vector3D(0, 0, TEE_AXIS), new Vector3D(LENGTH, 0, TEE_AXIS), 12),
                tee,
                UP,
                ElasticMaterial.STEEL));
    int upper =
        assembly.body(
            BeamBody.straight(
                Shapes.line(new Vector3D(0, 0, zTop), new Vector3D(LENGTH, 0, zTop), 12),
                SectionShapes.rectangle(150, 10),
                UP,
                ElasticMaterial.STEEL));
    double force = TendonForce.forceN(1080, ShrinkageMaterial.CARBON_STEEL);
    for (int side : new int[] {-1, 1}) {
      // The tendon acts at the joint between flange and web: 150 mm from the girder's middle.
      double z = 160 + side * 150;
      List<Integer> pieces = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        Vector3D offset = new Vector3D(0, 0, z - TEE_AXIS);
        MaterialPoint from = Shapes.at(assembly, lower, i, offset);
        MaterialPoint to = Shapes.at(assembly, lower, i + 1, offset);
        pieces.add(assembly.load(Load.tendon(assembly, from, to, force)));
      }
      tendons.put(side, pieces);
    }
    for (int i = 0; i < 13; i++) {
      fits.add(
          assembly.link(
              Shapes.at(assembly, lower, i, new Vector3D(0, 0, zTop - TEE_AXIS)),
              Shapes.at(assembly, upper, i),
              Shapes.AXES));
    }
    Coordinate middle = assembly.displacement(Shapes.at(assembly, lower, 6), UP);
    Coordinate ends =
        assembly
            .displacement(Shapes.at(assembly, lower, 0), UP)
            .plus(assembly.displacement(Shapes.at(assembly, lower, 12), UP))
            .times(-0.5);
    camber = assembly.reading(middle.plus(ends).times(-1));
    structure = new Structure(assembly, 1);
  }

  void fitTop() {
    fits.forEach(fit -> structure.join(fit, SpringStiffness.RIGID));
  }

  void shrink(int side) {
    tendons.get(side).forEach(piece -> structure.apply(piece, 1, 0));
  }

  double camber() {
    return structure.reading(camber);
  }

  /**
   * Camber after the bottom weld (1) or both (2), the top flange tacked before the first or loose
   * until the second.
   */
  static double camberMm(boolean tackedFirst, int welds) {
    GirderCase girder = new GirderCase();
    if (tackedFirst) {
      girder.fitTop();
    }
    girder.shrink(-1);
    if (welds == 2) {
      if (!tackedFirst) {
        girder.fitTop();
      }
      girder.shrink(1);
    }
    return girder.camber();
  }
}
