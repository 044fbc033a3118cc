package org.counterpull.heat.solve;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The fastest decay that each block may show, by Gershgorin's circles. */
final class Stiffness {
  private Stiffness() {}

  /** Upper bounds in 1/s, with all links, laid or not. */
  static Map<BlockField, Double> byField(List<BlockField> fields, List<LinkTerms> links) {
    Map<BlockField, double[]> conductance = new IdentityHashMap<>();
    for (BlockField field : fields) {
      double[] own = new double[field.block().size()];
      field.addBound(own);
      conductance.put(field, own);
    }
    for (LinkTerms link : links) {
      link.addBound(conductance.get(link.a), conductance.get(link.b));
    }
    Map<BlockField, Double> bounds = new IdentityHashMap<>();
    for (BlockField field : fields) {
      bounds.put(field, field.stiffness(conductance.get(field)));
    }
    return bounds;
  }
}
