package org.counterpull.heat.link;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/**
 * Lays the patches of one surface over those of another that faces it: which lie opposite each
 * other, over what area, at what distance.
 */
final class FacingPatches {
  private static final double FACING = -0.7;
  private static final double LEAST_SHARE = 1e-9;

  private FacingPatches() {}

  /**
   * All pairs whose surfaces face each other.
   *
   * @param as patches of one block
   * @param bs patches of the other
   * @param nearestMm least distance along the normal (negative allows them to overlap)
   * @param farthestMm greatest distance
   */
  static List<Pair> of(List<Patch> as, List<Patch> bs, double nearestMm, double farthestMm) {
    List<Patch> sorted = new ArrayList<>(bs);
    sorted.sort(Comparator.comparingDouble(p -> p.centre().x()));
    double largest = sorted.stream().mapToDouble(FacingPatches::reach).max().orElse(0);
    double slack = Math.max(Math.abs(nearestMm), farthestMm);
    List<Pair> pairs = new ArrayList<>();
    for (Patch a : as) {
      double reach = reach(a) + largest + slack;
      int at = firstFrom(sorted, a.centre().x() - reach);
      while (at < sorted.size() && sorted.get(at).centre().x() <= a.centre().x() + reach) {
        Patch b = sorted.get(at++);
        double apart = b.centre().minus(a.centre()).norm();
        if (a.normal().dot(b.normal()) < FACING && apart <= reach(a) + reach(b) + slack) {
          add(pairs, a, b, nearestMm, farthestMm);
        }
      }
    }
    return pairs;
  }

  private static void add(List<Pair> pairs, Patch a, Patch b, double nearest, double farthest) {
    Frame plane = Frame.withZ(b.centre(), b.normal());
    double distance = plane.toLocal(a.centre()).z();
    if (distance < nearest || distance > farthest) {
      return;
    }
    List<double[]> ringA = flat(plane, a);
    List<double[]> ringB = flat(plane, b);
    double areaA = ConvexArea.of(ringA);
    double areaB = ConvexArea.of(ringB);
    double common = ConvexArea.common(ringA, ringB);
    if (common > LEAST_SHARE * Math.min(areaA, areaB)) {
      // The polygon is a chord or a full cell: give the shared share of the true area.
      double share = common / Math.min(areaA, areaB);
      double truth = areaA <= areaB ? a.areaMm2() : b.areaMm2();
      pairs.add(new Pair(a, b, share * truth, Math.max(0, distance)));
    }
  }

  private static List<double[]> flat(Frame plane, Patch patch) {
    List<double[]> ring = new ArrayList<>();
    for (Vec3 corner : patch.corners()) {
      Vec3 local = plane.toLocal(corner);
      ring.add(new double[] {local.x(), local.y()});
    }
    return ring;
  }

  private static double reach(Patch patch) {
    double reach = 0;
    for (Vec3 corner : patch.corners()) {
      reach = Math.max(reach, corner.minus(patch.centre()).norm());
    }
    return reach;
  }

  private static int firstFrom(List<Patch> sorted, double x) {
    int low = 0;
    int high = sorted.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sorted.get(middle).centre().x() < x) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
