package org.counterpull.contact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.PieceReach;
import org.counterpull.solid.Solid;

/**
 * Whether a torch or electrode gets to a line.
 *
 * <p>At points along the line the cone of {@link Torch} is set on the corner's bisector, and tilted
 * off it across the line, along it, and both; one free cone is enough. The cone is filled with
 * balls that touch its mantle, the first at its end, each an eighth smaller than the last, down to
 * 4 mm off the tip; a part that comes into a ball by more than a quarter of a millimetre is in the
 * way. The two parts of the joint are in the way only with what rises in front of both faces of the
 * corner: the faces themselves are not. An inside corner narrower than the cone is out of reach;
 * flare grooves are not held to that, as they are filled from their mouth.
 */
final class ReachTest {
  private static final double TOUCH_MM = 0.25;
  private static final double NEAREST_MM = 4;
  private static final double GROWTH = 8.0 / 7;
  private static final double SPACING_MM = 25;

  /** Keeps the number of points when a length is a whole number of spacings. */
  private static final double ROUNDING = 1e-6;

  private static final int FEWEST_POINTS = 3;
  private static final int MOST_POINTS = 12;

  private final Torch torch;
  private final List<Solid> solids;
  private final double sine;
  private final double[][] tilts;

  ReachTest(Torch torch, List<Solid> solids) {
    this.torch = torch;
    this.solids = List.copyOf(solids);
    sine = Math.sin(Math.toRadians(torch.coneDeg() / 2));
    double t = Math.tan(Math.toRadians(torch.tiltDeg()));
    tilts =
        new double[][] {
          {0, 0}, {t, 0}, {-t, 0}, {0, t}, {0, -t}, {t, t}, {t, -t}, {-t, t}, {-t, -t}
        };
  }

  /**
   * How much of a line can be reached. The joint's own two parts are named as being in the way only
   * when they are so by themselves, whatever else is there.
   */
  WeldLine.Reach of(RawLine line, String first, String second) {
    WeldLine.Reach all = of(line, first, second, solids);
    if (all.open() || Collections.disjoint(all.blockedBy(), List.of(first, second))) {
      return all;
    }
    List<Solid> own =
        solids.stream().filter(s -> s.name().equals(first) || s.name().equals(second)).toList();
    if (!of(line, first, second, own).open()) {
      return all;
    }
    List<String> others = new ArrayList<>(all.blockedBy());
    others.removeAll(List.of(first, second));
    return new WeldLine.Reach(all.share(), others);
  }

  private WeldLine.Reach of(RawLine line, String first, String second, List<Solid> present) {
    boolean inside = line.shape() == WeldLine.Shape.FILLET;
    if (inside && line.dihedralDeg() < torch.coneDeg() - 1e-6) {
      return new WeldLine.Reach(0, List.copyOf(new TreeSet<>(List.of(first, second))));
    }
    double length = line.path().lengthMm();
    int points =
        Math.max(
            FEWEST_POINTS, Math.min(MOST_POINTS, (int) Math.ceil(length / SPACING_MM - ROUNDING)));
    int free = 0;
    TreeSet<String> blockers = new TreeSet<>();
    for (int i = 0; i < points; i++) {
      Corner corner = line.corners().apply(length * (i + 0.5) / points);
      List<Solid> near = near(corner.tip(), present);
      TreeSet<String> here = new TreeSet<>();
      boolean open = false;
      for (int k = 0; k < tilts.length && !open; k++) {
        String blocker =
            blocker(corner, tilted(corner, tilts[k]), near, first, second, line.dihedralDeg());
        open = blocker.isEmpty();
        here.add(blocker);
      }
      free += open ? 1 : 0;
      if (!open) {
        blockers.addAll(here);
      }
    }
    return new WeldLine.Reach((double) free / points, new ArrayList<>(blockers));
  }

  private List<Solid> near(Vector3D tip, List<Solid> present) {
    return present.stream().filter(s -> s.box().distance(tip) < torch.lengthMm()).toList();
  }

  private static Vector3D tilted(Corner corner, double[] tilt) {
    Vector3D o = corner.opening();
    Vector3D across = corner.tangent().crossProduct(o);
    return new Vector3D(1, o, tilt[0], across, tilt[1], corner.tangent()).normalize();
  }

  /** Name of a part in the way, empty when the cone is free. */
  private String blocker(
      Corner corner,
      Vector3D along,
      List<Solid> near,
      String first,
      String second,
      double dihedralDeg) {
    double last = torch.lengthMm() / (1 + sine);
    for (double s = last; s >= NEAREST_MM; s /= GROWTH) {
      Vector3D centre = corner.tip().add(s, along);
      double radius = s * sine - TOUCH_MM;
      for (Solid solid : near) {
        if (radius <= 0 || solid.box().distance(centre) > radius) {
          continue;
        }
        boolean own = solid.name().equals(first) || solid.name().equals(second);
        if (enters(solid, centre, radius, own ? corner : null, dihedralDeg)) {
          return solid.name();
        }
      }
    }
    return "";
  }

  private static boolean enters(
      Solid solid, Vector3D centre, double radius, Corner own, double dihedralDeg) {
    for (PieceReach piece : solid.reaches()) {
      Vector3D at = piece.nearest(centre);
      if (at.distance(centre) < radius && (own == null || rises(own, at, dihedralDeg))) {
        return true;
      }
    }
    return false;
  }

  /** True for material in the free space of the corner. */
  private static boolean rises(Corner corner, Vector3D at, double dihedralDeg) {
    Vector3D arm = at.subtract(corner.tip());
    boolean aboveFirst = arm.dotProduct(corner.first()) > TOUCH_MM;
    boolean aboveSecond = arm.dotProduct(corner.second()) > TOUCH_MM;
    return dihedralDeg <= 180 ? aboveFirst && aboveSecond : aboveFirst || aboveSecond;
  }
}
