package org.counterpull.heat.solve;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Edge;
import org.counterpull.heat.material.ThermalMaterial;

/** The fastest decay that each block may show, by Gershgorin's circles. */
final class Stiffness {
  private Stiffness() {}

  /** Upper bounds in 1/s, with all links, laid or not. */
  static Map<BlockField, Double> byField(List<BlockField> fields, List<LinkTerms> links) {
    Map<BlockField, double[]> conductance = new IdentityHashMap<>();
    for (BlockField field : fields) {
      double[] own = new double[field.block().size()];
      addBlock(field, own);
      conductance.put(field, own);
    }
    for (LinkTerms link : links) {
      link.addBound(conductance.get(link.a), conductance.get(link.b));
    }
    Map<BlockField, Double> bounds = new IdentityHashMap<>();
    for (BlockField field : fields) {
      bounds.put(field, fastest(field, conductance.get(field)));
    }
    return bounds;
  }

  /** Adds to each cell its conductance to its neighbours, twice, and to the outside, W/K. */
  private static void addBlock(BlockField field, double[] conductance) {
    Block block = field.block();
    ThermalMaterial material = field.material();
    // So that the product with the greatest rise is the greatest diffusivity.
    double k = material.greatestDiffusivityMm2PerS() / material.greatestKPerJMm3();
    int[] strides = block.strides();
    for (int d = 0; d < 3; d++) {
      double[] g = block.shapeMm(d);
      for (int p = block.first(), end = block.end(); p < end; p++) {
        conductance[p] += 2 * k * (g[p] + g[p - strides[d]]);
      }
    }
    for (Edge e : field.edges()) {
      conductance[e.cellA()] += 2 * k * e.shapeMm();
      conductance[e.cellB()] += 2 * k * e.shapeMm();
    }
    field.surface().addBound(conductance);
  }

  private static double fastest(BlockField field, double[] conductance) {
    double worst = 0;
    double[] volume = field.block().volumeMm3();
    for (int p = field.block().first(), end = field.block().end(); p < end; p++) {
      worst = volume[p] > 0 ? Math.max(worst, conductance[p] / volume[p]) : worst;
    }
    return worst * field.material().greatestKPerJMm3();
  }
}
