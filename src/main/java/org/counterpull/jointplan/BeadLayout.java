package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.jointplan.PassPlan.Kind;
import org.counterpull.quantity.Require;

/**
 * Beads laid out in layers: as few as the largest bead, the layer height and the width of a layer
 * allow.
 *
 * <p>A fillet is stacked as a triangle, one bead more in each layer. A groove gets its root bead,
 * then layers no higher than the limit, each split where it is wider than a bead; the cap goes with
 * the last layer.
 */
final class BeadLayout {
  /** Share of a bead's width that the next one in the layer covers. */
  private static final double OVERLAP = 0.3;

  private BeadLayout() {}

  /**
   * Beads of a fillet.
   *
   * @param totalMm2 weld metal, overfill included
   * @param limits what one bead may be
   */
  static List<Bead> fillet(double totalMm2, BeadLimits limits) {
    Require.positive("weld metal", totalMm2, "mm2");
    int count = (int) Math.ceil(totalMm2 / limits.areaMm2() - 1e-9);
    int layers = 1;
    while (layers * (layers + 1) / 2 < count) {
      layers++;
    }
    List<Bead> beads = new ArrayList<>();
    int layer = 1;
    int left = 1;
    for (int number = 1; number <= count; number++) {
      if (left == 0) {
        layer++;
        left = layer;
      }
      left--;
      beads.add(new Bead(number, layer, kind(number, count, layer, layers), totalMm2 / count));
    }
    return List.copyOf(beads);
  }

  /**
   * Beads of one side of a groove.
   *
   * @param space the space to fill
   * @param capMm2 reinforcement above the face
   * @param limits what one bead may be
   */
  static List<Bead> groove(GrooveSpace space, double capMm2, BeadLimits limits) {
    double spaceMm2 = space.areaMm2(space.depthMm());
    if (spaceMm2 + capMm2 <= limits.areaMm2()
        && space.depthMm() <= limits.layerMm() + limits.rootMm()) {
      return List.of(new Bead(1, 1, Kind.SINGLE, spaceMm2 + capMm2));
    }
    double rootMm2 =
        Math.min(limits.areaMm2(), Math.max(space.areaMm2(limits.rootMm()), limits.areaMm2() / 3));
    double level = space.levelMm(rootMm2);
    List<Bead> beads = new ArrayList<>();
    beads.add(new Bead(1, 1, Kind.ROOT, rootMm2));
    int layers = Math.max(1, (int) Math.ceil((space.depthMm() - level) / limits.layerMm() - 1e-9));
    double step = (space.depthMm() - level) / layers;
    double filled = rootMm2;
    for (int layer = 1; layer <= layers; layer++) {
      double top = level + layer * step;
      boolean last = layer == layers;
      double area = space.areaMm2(top) - filled + (last ? capMm2 : 0);
      filled = Math.max(filled, space.areaMm2(top));
      if (area > 0) {
        addLayer(beads, layer + 1, last ? Kind.CAP : Kind.FILL, area, space.widthMm(top), limits);
      }
    }
    return List.copyOf(beads);
  }

  private static void addLayer(
      List<Bead> beads, int layer, Kind kind, double areaMm2, double widthMm, BeadLimits limits) {
    double cover = OVERLAP * limits.widthMm();
    int byWidth = (int) Math.ceil((widthMm - cover) / (limits.widthMm() - cover) - 1e-9);
    int byArea = (int) Math.ceil(areaMm2 / limits.areaMm2() - 1e-9);
    int count = Math.max(1, Math.max(byWidth, byArea));
    for (int i = 0; i < count; i++) {
      beads.add(new Bead(beads.size() + 1, layer, kind, areaMm2 / count));
    }
  }

  private static Kind kind(int number, int count, int layer, int layers) {
    if (count == 1) {
      return Kind.SINGLE;
    }
    if (number == 1) {
      return Kind.ROOT;
    }
    return layer == layers ? Kind.CAP : Kind.FILL;
  }
}
