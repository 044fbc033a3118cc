package org.counterpull.solid;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Shortest way between two convex polytopes that do not overlap. */
final class ConvexDistance {
  private ConvexDistance() {}

  /** The vector that moves {@code p} to touch {@code q}. */
  static Vector3D between(ConvexPiece p, ConvexPiece q) {
    Vector3D least = q.corners().get(0).subtract(p.corners().get(0));
    for (int[] e : p.edges()) {
      for (int[] f : q.edges()) {
        Vector3D way = segments(p, e, q, f);
        least = way.getNormSq() < least.getNormSq() ? way : least;
      }
    }
    least = cornersToFaces(p, q, least);
    return cornersToFaces(q, p, least.negate()).negate();
  }

  private static Vector3D cornersToFaces(ConvexPiece p, ConvexPiece q, Vector3D known) {
    Vector3D least = known;
    for (int k = 0; k < q.faces().size(); k++) {
      Vector3D normal = q.normals().get(k);
      Vector3D base = q.corners().get(q.faces().get(k)[0]);
      for (Vector3D corner : p.corners()) {
        double height = corner.subtract(base).dotProduct(normal);
        if (height >= 0 && height * height < least.getNormSq() && above(q, k, corner)) {
          least = normal.scalarMultiply(-height);
        }
      }
    }
    return least;
  }

  private static boolean above(ConvexPiece q, int k, Vector3D point) {
    int[] face = q.faces().get(k);
    for (int i = 0; i < face.length; i++) {
      Vector3D from = q.corners().get(face[i]);
      Vector3D along = q.corners().get(face[(i + 1) % face.length]).subtract(from);
      if (along.crossProduct(point.subtract(from)).dotProduct(q.normals().get(k)) < 0) {
        return false;
      }
    }
    return true;
  }

  /** Closest points of two segments by the clamped quadratic. */
  private static Vector3D segments(ConvexPiece p, int[] e, ConvexPiece q, int[] f) {
    Vector3D a = p.corners().get(e[0]);
    Vector3D c = q.corners().get(f[0]);
    Vector3D u = p.corners().get(e[1]).subtract(a);
    Vector3D v = q.corners().get(f[1]).subtract(c);
    Vector3D w = a.subtract(c);
    double uu = u.getNormSq();
    double vv = v.getNormSq();
    if (uu == 0 || vv == 0) {
      return w.negate();
    }
    double uv = u.dotProduct(v);
    double uw = u.dotProduct(w);
    double vw = v.dotProduct(w);
    double det = uu * vv - uv * uv;
    double s = det > 1e-12 * uu * vv ? clamp((uv * vw - vv * uw) / det) : 0;
    double t = clamp((uv * s + vw) / vv);
    s = clamp((uv * t - uw) / uu);
    return new Vector3D(-1, w, -s, u, t, v);
  }

  private static double clamp(double share) {
    return Math.max(0, Math.min(1, share));
  }
}
