package org.counterpull.heat.solve;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The fastest decay that a set of blocks may show, by Gershgorin's circles. */
final class Stiffness {
  private Stiffness() {}

  /** Upper bound in 1/s over the blocks, links to blocks outside included. */
  static double of(List<BlockField> fields, List<LinkTerms> links) {
    Map<BlockField, double[]> conductance = new IdentityHashMap<>();
    for (BlockField field : fields) {
      double[] own = new double[field.block().size()];
      field.addBound(own);
      conductance.put(field, own);
    }
    for (LinkTerms link : links) {
      double[] ofA = conductance.get(link.a);
      double[] ofB = conductance.get(link.b);
      if (ofA != null || ofB != null) {
        link.addBound(orSpare(ofA, link.a), orSpare(ofB, link.b));
      }
    }
    double worst = 0;
    for (BlockField field : fields) {
      worst = Math.max(worst, field.stiffness(conductance.get(field)));
    }
    return worst;
  }

  private static double[] orSpare(double[] own, BlockField field) {
    return own != null ? own : new double[field.block().size()];
  }
}
