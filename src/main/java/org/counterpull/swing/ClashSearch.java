package org.counterpull.swing;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Box;
import org.counterpull.solid.Separation;
import org.counterpull.solid.Solid;

/**
 * The first angle at which a turning solid comes into a standing one.
 *
 * <p>From a free position the solid turns by no more than its distance from the others over its
 * farthest radius, so that nothing is jumped over; at least by {@value #LEAST_STEP_DEG} degrees.
 * The angle is then halved in on.
 */
final class ClashSearch {
  /** Parts that are this deep in each other clash, mm; round parts are that exact. */
  static final double DEPTH_MM = 0.3;

  private static final double LEAST_STEP_DEG = 0.1;
  private static final double EXACT_DEG = 0.01;
  private static final double NEAR_MM = 20;

  private final Turning turning;
  private final List<Solid> standing;

  ClashSearch(Turning turning, List<Solid> standing) {
    this.turning = turning;
    this.standing = standing;
  }

  /** What a solid meets first. */
  record Met(Solid other, double deg) {}

  /** On the way from one angle to another. */
  Optional<Met> first(Solid solid, double fromDeg, double toDeg) {
    double way = Math.signum(toDeg - fromDeg);
    double radius = radius(solid);
    double deg = fromDeg;
    double free = fromDeg;
    while (true) {
      Solid here = turning.solid(solid, deg);
      Optional<Solid> hit = hit(here);
      if (hit.isPresent()) {
        return Optional.of(new Met(hit.get(), halved(solid, hit.get(), free, deg)));
      }
      if (deg == toDeg) {
        return Optional.empty();
      }
      free = deg;
      double step = Math.max(LEAST_STEP_DEG, Math.toDegrees(room(here) / radius));
      deg = way > 0 ? Math.min(toDeg, deg + step) : Math.max(toDeg, deg - step);
    }
  }

  private Optional<Solid> hit(Solid here) {
    return standing.stream()
        .filter(other -> Separation.overlap(here, other, DEPTH_MM).isPresent())
        .findFirst();
  }

  private double halved(Solid solid, Solid other, double freeDeg, double hitDeg) {
    double free = freeDeg;
    double hit = hitDeg;
    while (Math.abs(hit - free) > EXACT_DEG) {
      double middle = (free + hit) / 2;
      boolean in = Separation.overlap(turning.solid(solid, middle), other, DEPTH_MM).isPresent();
      hit = in ? middle : hit;
      free = in ? free : middle;
    }
    return hit;
  }

  /** The least distance from any standing solid, or less. */
  private double room(Solid here) {
    double least = Double.MAX_VALUE;
    for (Solid other : standing) {
      double boxes = gap(here.box(), other.box());
      double room = boxes > NEAR_MM ? boxes : Separation.apart(here, other).mm();
      least = Math.min(least, room);
    }
    return least;
  }

  static double gap(Box a, Box b) {
    double x = Math.max(a.low().getX() - b.high().getX(), b.low().getX() - a.high().getX());
    double y = Math.max(a.low().getY() - b.high().getY(), b.low().getY() - a.high().getY());
    double z = Math.max(a.low().getZ() - b.high().getZ(), b.low().getZ() - a.high().getZ());
    return new Vector3D(Math.max(0, x), Math.max(0, y), Math.max(0, z)).getNorm();
  }

  private double radius(Solid solid) {
    Box box = solid.box();
    double most = 1;
    for (int i = 0; i < 8; i++) {
      Vector3D corner =
          new Vector3D(
              ((i & 1) == 0 ? box.low() : box.high()).getX(),
              ((i & 2) == 0 ? box.low() : box.high()).getY(),
              ((i & 4) == 0 ? box.low() : box.high()).getZ());
      most = Math.max(most, turning.radius(corner));
    }
    return most;
  }
}
