package org.counterpull.heat.source;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Vec3;

/**
 * The way of the arc: straight pieces from point to point, with the direction into the metal at
 * each point.
 *
 * @param points at least one; one alone is a spot
 * @param into direction into the metal at each point
 */
public record TravelPath(List<Vec3> points, List<Vec3> into) {

  public TravelPath {
    points = List.copyOf(points);
    into = List.copyOf(into);
    if (points.isEmpty() || points.size() != into.size()) {
      throw new IllegalArgumentException(
          "a path needs points, each with a direction into the metal");
    }
    for (int n = 0; n + 1 < points.size(); n++) {
      if (points.get(n + 1).minus(points.get(n)).norm() == 0) {
        throw new IllegalArgumentException("two points of a path are the same: " + points.get(n));
      }
    }
  }

  /** A straight way. */
  public static TravelPath straight(Vec3 from, Vec3 to, Vec3 into) {
    return new TravelPath(List.of(from, to), List.of(into, into));
  }

  /** A place where the arc stands still. */
  public static TravelPath spot(Vec3 at, Vec3 into) {
    return new TravelPath(List.of(at), List.of(into));
  }

  /** Length of the whole way. */
  public double lengthMm() {
    double length = 0;
    for (int n = 0; n + 1 < points.size(); n++) {
      length += points.get(n + 1).minus(points.get(n)).norm();
    }
    return length;
  }

  /**
   * A straight stretch that the source covers in a step.
   *
   * @param from where the stretch begins
   * @param lengthMm how long it is; 0 for a spot
   * @param along unit direction of travel
   * @param into unit direction into the metal, square to it
   */
  public record Stretch(Vec3 from, double lengthMm, Vec3 along, Vec3 into) {}

  /** The stretches between two lengths along the way. */
  List<Stretch> between(double fromMm, double toMm) {
    if (points.size() == 1) {
      Vec3 in = into.get(0).unit();
      Vec3 along = (Math.abs(in.x()) < 0.9 ? Vec3.X : Vec3.Y).squareTo(in);
      return List.of(new Stretch(points.get(0), 0, along, in));
    }
    List<Stretch> stretches = new ArrayList<>();
    double start = 0;
    for (int n = 0; n + 1 < points.size(); n++) {
      Vec3 piece = points.get(n + 1).minus(points.get(n));
      double length = piece.norm();
      double low = Math.max(fromMm, start);
      double high = Math.min(toMm, start + length);
      if (high > low) {
        Vec3 along = piece.times(1 / length);
        double part = (0.5 * (low + high) - start) / length;
        Vec3 in = into.get(n).times(1 - part).plus(into.get(n + 1).times(part));
        Vec3 from = points.get(n).plus(along.times(low - start));
        stretches.add(new Stretch(from, high - low, along, in.squareTo(along)));
      }
      start += length;
    }
    return stretches;
  }
}
