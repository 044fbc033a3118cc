package org.counterpull.solid;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * How far two solids are apart, or how deep one is in the other.
 *
 * <p>Depth: for two convex polytopes the least move that parts them is along a normal of one of
 * their faces or square to an edge of each (separating axes). For solids of several pieces the
 * deepest pair of pieces counts, so the depth says that they overlap and about how far; moving by
 * it parts that pair.
 *
 * <p>Distance: over pairs of a corner and a face and pairs of edges, which is exact for convex
 * polytopes that do not overlap.
 */
public final class Separation {
  private Separation() {}

  /**
   * A move of the first solid.
   *
   * @param mm how far
   * @param direction unit vector
   */
  public record Move(double mm, Vector3D direction) {}

  /** The move of {@code a} that parts the two, when they are in each other by more than a depth. */
  public static Optional<Move> overlap(Solid a, Solid b, double moreThanMm) {
    if (!a.box().meets(b.box())) {
      return Optional.empty();
    }
    Move deepest = null;
    for (ConvexPiece p : a.pieces()) {
      if (!p.box().meets(b.box())) {
        continue;
      }
      for (ConvexPiece q : b.pieces()) {
        double floor = deepest == null ? moreThanMm : deepest.mm();
        Optional<Move> move = p.box().meets(q.box()) ? depth(p, q, floor) : Optional.<Move>empty();
        deepest = move.orElse(deepest);
      }
    }
    return Optional.ofNullable(deepest);
  }

  /** The move of {@code a} that brings it to touch {@code b}; 0 mm when they touch or overlap. */
  public static Move apart(Solid a, Solid b) {
    if (overlap(a, b, 0).isPresent()) {
      return new Move(0, Vector3D.PLUS_K);
    }
    Vector3D least = null;
    for (ConvexPiece p : a.pieces()) {
      for (ConvexPiece q : b.pieces()) {
        double limit = least == null ? Double.MAX_VALUE : least.getNorm();
        if (p.box().grown(limit).meets(q.box())) {
          Vector3D between = ConvexDistance.between(p, q);
          least = between.getNorm() < limit ? between : least;
        }
      }
    }
    if (least == null || least.getNorm() < 1e-9) {
      return new Move(0, Vector3D.PLUS_K);
    }
    return new Move(least.getNorm(), least.normalize());
  }

  private static Optional<Move> depth(ConvexPiece p, ConvexPiece q, double floorMm) {
    Search search = new Search(p, q);
    if (search.tryAll(p.normals(), floorMm) && search.tryAll(q.normals(), floorMm)) {
      for (Vector3D e : p.edgeDirections()) {
        for (Vector3D f : q.edgeDirections()) {
          Vector3D square = e.crossProduct(f);
          double norm = square.getNorm();
          if (norm > 1e-6 && !search.tryOne(square.scalarMultiply(1 / norm), floorMm)) {
            return Optional.empty();
          }
        }
      }
      return Optional.of(new Move(search.least, search.direction));
    }
    return Optional.empty();
  }

  /** The least overlap over the axes tried so far. */
  private static final class Search {
    private final ConvexPiece p;
    private final ConvexPiece q;
    private double least = Double.MAX_VALUE;
    private Vector3D direction = Vector3D.PLUS_K;

    Search(ConvexPiece p, ConvexPiece q) {
      this.p = p;
      this.q = q;
    }

    boolean tryAll(List<Vector3D> axes, double floorMm) {
      for (Vector3D axis : axes) {
        if (!tryOne(axis, floorMm)) {
          return false;
        }
      }
      return true;
    }

    /** False when the overlap along the axis is not above the floor. */
    boolean tryOne(Vector3D axis, double floorMm) {
      double[] a = extent(p, axis);
      double[] b = extent(q, axis);
      double up = b[1] - a[0];
      double down = a[1] - b[0];
      double here = Math.min(up, down);
      if (here <= floorMm) {
        return false;
      }
      if (here < least - 1e-9) {
        least = here;
        direction = up <= down ? axis : axis.negate();
      }
      return true;
    }

    private static double[] extent(ConvexPiece piece, Vector3D axis) {
      double low = Double.MAX_VALUE;
      double high = -Double.MAX_VALUE;
      for (Vector3D corner : piece.corners()) {
        double at = corner.dotProduct(axis);
        low = Math.min(low, at);
        high = Math.max(high, at);
      }
      return new double[] {low, high};
    }
  }
}
