package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.groove.GrooveSide;
import org.counterpull.jointplan.PassPlan.Kind;
import org.counterpull.quantity.Require;

/**
 * Beads laid out in layers: as few as the largest bead, the layer height and the width of a layer
 * allow.
 *
 * <p>A fillet is stacked as a triangle, one bead more in each layer, from the lower part upwards. A
 * groove gets its root bead, then layers no higher than the limit, each split where it is wider
 * than a bead and laid walls first; the cap goes with the last layer.
 */
final class BeadLayout {
  /** Share of a bead's width that the next one in the layer covers. */
  private static final double OVERLAP = 0.3;

  /** A root is at least this share of the largest bead. */
  private static final double LEAST_ROOT = 1.0 / 3;

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
      beads.add(
          new Bead(
              number, layer, layer - left, kind(number, count, layer, layers), totalMm2 / count));
    }
    return List.copyOf(beads);
  }

  /**
   * Beads of one side of a groove whose root is closed: by a backing, by tight edges or by the side
   * that was welded first. Their areas add up to the room and the cap.
   *
   * @param space the room to fill
   * @param capMm2 reinforcement above the face
   * @param limits what one bead may be
   * @param deepest what its deepest bead is: a root, or a fill where the other side closed the root
   */
  static List<Bead> groove(GrooveSide space, double capMm2, BeadLimits limits, Kind deepest) {
    double spaceMm2 = space.areaMm2();
    // Tight edges leave nothing to fill beside the root face.
    double toFillMm = space.gapMm() > 0 ? space.heightMm() : space.depthMm();
    if (spaceMm2 + capMm2 <= limits.areaMm2() && toFillMm <= limits.layerMm() + limits.rootMm()) {
      return List.of(new Bead(1, 1, Kind.SINGLE, spaceMm2 + capMm2));
    }
    return layered(space, capMm2, limits, new Bead(1, 1, deepest, rootMm2(space, limits)));
  }

  /**
   * The same for an open root: its first bead is laid with settings of its own, and more beads
   * follow unless it fills all of a shallow groove.
   */
  static List<Bead> openGroove(
      GrooveSide space, double capMm2, BeadLimits limits, BeadLimits rootLimits) {
    double all = space.areaMm2() + capMm2;
    if (all <= rootLimits.areaMm2() && space.heightMm() <= rootLimits.rootMm() + 1) {
      return List.of(new Bead(1, 1, Kind.ROOT, all));
    }
    return layered(space, capMm2, limits, new Bead(1, 1, Kind.ROOT, rootMm2(space, rootLimits)));
  }

  /**
   * Beads over a channel that was ground out below them: it goes with the first bead where that can
   * take it, otherwise it takes a bead of its own.
   *
   * @param channelMm2 section of the channel
   * @param beads that lie over it, at least one
   * @param limits what one bead may be
   */
  static List<Bead> over(double channelMm2, List<Bead> beads, BeadLimits limits) {
    Bead first = beads.get(0);
    List<Bead> all = new ArrayList<>();
    if (first.areaMm2() + channelMm2 <= limits.areaMm2()) {
      all.add(new Bead(1, 1, first.place(), first.kind(), first.areaMm2() + channelMm2));
      all.addAll(beads.subList(1, beads.size()));
      return List.copyOf(all);
    }
    all.add(new Bead(1, 1, Kind.FILL, channelMm2));
    for (Bead bead : beads) {
      Kind kind = bead.kind() == Kind.SINGLE ? Kind.CAP : bead.kind();
      all.add(new Bead(bead.number() + 1, bead.layer() + 1, bead.place(), kind, bead.areaMm2()));
    }
    return List.copyOf(all);
  }

  private static double rootMm2(GrooveSide space, BeadLimits limits) {
    double least = Math.max(space.areaMm2(limits.rootMm()), LEAST_ROOT * limits.areaMm2());
    return Math.min(space.areaMm2(), Math.min(limits.areaMm2(), least));
  }

  private static List<Bead> layered(
      GrooveSide space, double capMm2, BeadLimits limits, Bead deepest) {
    List<Bead> beads = new ArrayList<>();
    if (deepest.areaMm2() > 0) {
      beads.add(deepest);
    }
    double level = space.levelMm(deepest.areaMm2());
    double left = space.heightMm() - level;
    int layers = Math.max(1, (int) Math.ceil(left / limits.layerMm() - 1e-9));
    double filled = deepest.areaMm2();
    for (int layer = 1; layer <= layers; layer++) {
      boolean last = layer == layers;
      double top = last ? space.heightMm() : level + layer * left / layers;
      double area = space.areaMm2(top) - filled + (last ? capMm2 : 0);
      filled = space.areaMm2(top);
      addLayer(beads, layer + 1, last ? Kind.CAP : Kind.FILL, area, space.widthMm(top), limits);
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
      beads.add(new Bead(beads.size() + 1, layer, wallsFirst(i, count), kind, areaMm2 / count));
    }
  }

  /** Place of the next bead of a layer: both walls first, then inwards, the middle last. */
  private static int wallsFirst(int laid, int count) {
    return laid % 2 == 0 ? 1 + laid / 2 : count - laid / 2;
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
