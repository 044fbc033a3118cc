package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/** Small pieces from which the tests build their assemblies. */
final class Shapes {
  static final Frame AXES = Frame.WELDMENT;

  private Shapes() {}

  static List<Vector3D> line(Vector3D from, Vector3D to, int pieces) {
    List<Vector3D> nodes = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      double f = (double) i / pieces;
      nodes.add(new Vector3D(1 - f, from, f, to));
    }
    return nodes;
  }

  static MaterialPoint at(Assembly assembly, int body, int node) {
    return new MaterialPoint(body, node, assembly.bodies().get(body).exposed(node));
  }

  static MaterialPoint at(Assembly assembly, int body, int node, Vector3D offset) {
    return new MaterialPoint(body, node, assembly.bodies().get(body).exposed(node).add(offset));
  }

  /** A section with next to no give in shear, for comparison with slender-beam formulas. */
  static SectionStiffness slender(SectionStiffness s) {
    return new SectionStiffness(
        s.areaMm2(),
        s.iyMm4(),
        s.izMm4(),
        s.iyzMm4(),
        s.torsionMm4(),
        1e12,
        1e12,
        s.shearCentreYMm(),
        s.shearCentreZMm());
  }
}
