package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;

/**
 * What two plane regions have in common.
 *
 * <p>Every edge of one region is split where the other region's edges meet it; the pieces that lie
 * inside the other region, and those that run along one of its edges with both regions on the same
 * side, are the boundary of the common region. Its area is the sum of what they sweep (Green). No
 * polygon is put together and nothing need be convex; circles stay circles.
 */
record Patch(double areaMm2, List<Piece> pieces) {
  Patch {
    pieces = List.copyOf(pieces);
  }

  /**
   * A piece of the boundary.
   *
   * @param ofFirst true when {@code edge} belongs to the first region
   * @param along the edge of the other region that it runs along
   */
  record Piece(PlaneEdge edge, boolean ofFirst, Optional<PlaneEdge> along, double from, double to) {
    Vector2D middle() {
      return edge.at((from + to) / 2);
    }

    Vector2D outward() {
      return edge.outward((from + to) / 2);
    }
  }

  static Patch of(PlaneRegion first, PlaneRegion second) {
    List<Piece> pieces = new ArrayList<>();
    first.edges().forEach(edge -> split(edge, second, true, pieces));
    second.edges().forEach(edge -> split(edge, first, false, pieces));
    double twice = 0;
    for (Piece piece : pieces) {
      twice += piece.edge().twiceArea(piece.from(), piece.to());
    }
    return new Patch(twice / 2, pieces);
  }

  /** The middle of the boundary. */
  Vector2D middle() {
    double x = 0;
    double y = 0;
    for (Piece piece : pieces) {
      x += piece.middle().getX();
      y += piece.middle().getY();
    }
    return new Vector2D(x / pieces.size(), y / pieces.size());
  }

  private static void split(
      PlaneEdge edge, PlaneRegion other, boolean ofFirst, List<Piece> pieces) {
    TreeSet<Double> places = new TreeSet<>();
    boolean closed = edge instanceof PlaneEdge.Circle;
    for (PlaneEdge o : other.edges()) {
      places.addAll(edge.meets(o));
    }
    if (!closed || places.isEmpty()) {
      places.add(0.0);
      places.add(edge.span());
    } else {
      places.add(places.first() + edge.span());
    }
    Double before = null;
    Piece last = null;
    for (double place : places) {
      if (before != null && place - before > 10 * PlaneEdge.SAME_MM / scale(edge)) {
        Optional<Piece> piece = piece(edge, other, ofFirst, before, place);
        if (piece.isPresent() && last != null && follows(last, piece.get())) {
          pieces.remove(pieces.size() - 1);
          piece = Optional.of(new Piece(edge, ofFirst, last.along(), last.from(), place));
        }
        piece.ifPresent(pieces::add);
        last = piece.orElse(null);
      }
      before = place;
    }
  }

  private static double scale(PlaneEdge edge) {
    return edge instanceof PlaneEdge.Circle circle ? circle.radiusMm() : 1;
  }

  private static boolean follows(Piece last, Piece next) {
    return next.from() - last.to() < 1e-4 && last.along().equals(next.along());
  }

  private static Optional<Piece> piece(
      PlaneEdge edge, PlaneRegion other, boolean ofFirst, double from, double to) {
    Vector2D middle = edge.at((from + to) / 2);
    Optional<PlaneEdge> along = other.edgeAt(middle);
    if (along.isPresent()) {
      Vector2D here = edge.outward((from + to) / 2);
      PlaneEdge on = along.get();
      Vector2D there =
          on instanceof PlaneEdge.Circle circle
              ? middle.subtract(circle.centre()).scalarMultiply(circle.anticlockwise() ? 1 : -1)
              : on.outward(0);
      boolean once = ofFirst && here.dotProduct(there) > 0;
      return once ? Optional.of(new Piece(edge, true, along, from, to)) : Optional.empty();
    }
    return other.contains(middle)
        ? Optional.of(new Piece(edge, ofFirst, Optional.empty(), from, to))
        : Optional.empty();
  }
}
