package org.counterpull.solid;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A plane face of a solid.
 *
 * @param normal unit vector out of the solid
 * @param edges its boundary, the face lying left of each edge for somebody who looks against the
 *     normal
 * @param kind what it is on its part
 * @param wallMm thickness of the wall behind it
 */
public record FlatFace(Vector3D normal, List<Edge> edges, Kind kind, double wallMm) {
  public FlatFace {
    edges = List.copyOf(edges);
  }

  /** What a face is on its part. */
  public enum Kind {
    /** A cut end. */
    END,
    /** A side about as narrow as its wall is thick: the edge of a flat, the toe of an angle. */
    NARROW,
    /** A broad side. */
    BROAD
  }

  /** A point of the face. */
  public Vector3D point() {
    return edges.get(0).somewhere();
  }

  /** A part of the boundary, with what lies around the corner. */
  public sealed interface Edge {
    /** Thickness of the wall around the edge. */
    double wallMm();

    /** True for the rim of a hole in the face. */
    boolean hole();

    /**
     * The angle of material at the edge, degrees: 90 for a square corner, 270 for an inside one.
     */
    double materialDeg();

    /** Outward normal of the neighbouring face at a point of the edge. */
    Vector3D neighbourNormal(Vector3D point);

    /** A point of the edge. */
    Vector3D somewhere();
  }

  /**
   * A straight edge.
   *
   * @param chord true for a piece of an elliptical rim, which is drawn as a polygon
   */
  public record StraightEdge(
      Vector3D from,
      Vector3D to,
      Vector3D neighbour,
      double materialDeg,
      double wallMm,
      boolean hole,
      boolean chord)
      implements Edge {
    @Override
    public Vector3D neighbourNormal(Vector3D point) {
      return neighbour;
    }

    @Override
    public Vector3D somewhere() {
      return from;
    }
  }

  /** The whole rim of a square-cut round end, or of its bore. */
  public record RoundEdge(
      Vector3D centre, Vector3D axis, double radiusMm, double wallMm, boolean hole)
      implements Edge {
    @Override
    public double materialDeg() {
      return 90;
    }

    @Override
    public Vector3D neighbourNormal(Vector3D point) {
      Vector3D arm = point.subtract(centre);
      Vector3D square = arm.subtract(axis.scalarMultiply(arm.dotProduct(axis))).normalize();
      return hole ? square.negate() : square;
    }

    @Override
    public Vector3D somewhere() {
      return centre.add(axis.orthogonal().scalarMultiply(radiusMm));
    }
  }
}
