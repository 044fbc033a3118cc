package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.FlatFace;
import org.counterpull.space.Frame;

/** A region of a plane, by its boundary; it lies left of every edge. */
record PlaneRegion(List<PlaneEdge> edges) {
  PlaneRegion {
    edges = List.copyOf(edges);
  }

  /** A face in a plane's axes, seen against the plane's z; tags are the places in its edge list. */
  static PlaneRegion of(FlatFace face, Frame plane) {
    boolean mirrored = face.normal().dotProduct(plane.z()) < 0;
    List<PlaneEdge> edges = new ArrayList<>();
    for (int i = 0; i < face.edges().size(); i++) {
      if (face.edges().get(i) instanceof FlatFace.StraightEdge straight) {
        Vector2D from = flat(plane.into(mirrored ? straight.to() : straight.from()));
        Vector2D to = flat(plane.into(mirrored ? straight.from() : straight.to()));
        edges.add(new PlaneEdge.Segment(from, to, i));
      } else if (face.edges().get(i) instanceof FlatFace.RoundEdge round) {
        Vector2D centre = flat(plane.into(round.centre()));
        edges.add(new PlaneEdge.Circle(centre, round.radiusMm(), !round.hole(), i));
      }
    }
    return new PlaneRegion(edges);
  }

  private static Vector2D flat(Vector3D point) {
    return new Vector2D(point.getX(), point.getY());
  }

  /** The edge that a point lies on. */
  Optional<PlaneEdge> edgeAt(Vector2D point) {
    return edges.stream().filter(e -> e.distance(point) < PlaneEdge.SAME_MM).findFirst();
  }

  /** True inside; points of the boundary are to be asked for with {@link #edgeAt} before. */
  boolean contains(Vector2D point) {
    double turns = 0;
    for (PlaneEdge edge : edges) {
      turns += edge.turnsAround(point);
    }
    return turns > 0.5;
  }

  /** Where a ray from inside leaves the region. */
  Optional<Exit> exit(Vector2D from, Vector2D direction) {
    Exit nearest = null;
    for (PlaneEdge edge : edges) {
      for (double distance : edge.crossings(from, direction)) {
        if (distance > PlaneEdge.SAME_MM && (nearest == null || distance < nearest.distanceMm)) {
          nearest = new Exit(edge, distance);
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** An edge that a ray meets, and how far on. */
  record Exit(PlaneEdge edge, double distanceMm) {
    Vector2D outward(Vector2D from, Vector2D direction) {
      Vector2D at = new Vector2D(1, from, distanceMm, direction);
      return edge instanceof PlaneEdge.Circle circle
          ? at.subtract(circle.centre()).normalize()
          : edge.outward(0);
    }
  }
}
