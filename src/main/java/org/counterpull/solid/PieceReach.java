package org.counterpull.solid;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;

/**
 * Nearest points of a convex piece of a solid, or of a round one as a whole.
 *
 * <p>The nearest point of the section, moved along the sweep to between the ends: exact for square
 * ends; for a cut end the point found is on the piece, though perhaps not the very nearest.
 */
public final class PieceReach {
  private final Frame sweep;
  private final double[] us;
  private final double[] vs;
  private final double radiusMm;
  private final double boreMm;
  private final Cut low;
  private final Cut high;

  private PieceReach(
      Frame sweep, double[] us, double[] vs, double radiusMm, double boreMm, Cut low, Cut high) {
    this.sweep = sweep;
    this.us = us;
    this.vs = vs;
    this.radiusMm = radiusMm;
    this.boreMm = boreMm;
    this.low = low;
    this.high = high;
  }

  static PieceReach polygon(Frame sweep, List<Vector2D> corners, Cut low, Cut high) {
    double[] us = corners.stream().mapToDouble(Vector2D::getX).toArray();
    double[] vs = corners.stream().mapToDouble(Vector2D::getY).toArray();
    return new PieceReach(sweep, us, vs, 0, 0, low, high);
  }

  static PieceReach round(Frame sweep, Section.Round round, Cut low, Cut high) {
    return new PieceReach(
        sweep, new double[0], new double[0], round.radiusMm(), round.boreMm(), low, high);
  }

  /** The nearest point; the point itself when it is inside. */
  public Vector3D nearest(Vector3D point) {
    Vector3D local = sweep.into(point);
    double u = local.getX();
    double v = local.getY();
    double[] at = us.length == 0 ? onRing(u, v) : onPolygon(u, v);
    double w = Math.max(low.at(at[0], at[1]), Math.min(high.at(at[0], at[1]), local.getZ()));
    return sweep.outOf(new Vector3D(at[0], at[1], w));
  }

  private double[] onRing(double u, double v) {
    double r = Math.hypot(u, v);
    if (r < 1e-12) {
      return new double[] {boreMm, 0};
    }
    double scale = Math.max(boreMm, Math.min(radiusMm, r)) / r;
    return new double[] {u * scale, v * scale};
  }

  private double[] onPolygon(double u, double v) {
    double least = Double.MAX_VALUE;
    double[] best = {u, v};
    boolean inside = true;
    for (int i = 0; i < us.length; i++) {
      int j = (i + 1) % us.length;
      double du = us[j] - us[i];
      double dv = vs[j] - vs[i];
      double pu = u - us[i];
      double pv = v - vs[i];
      if (du * pv - dv * pu >= 0) {
        continue;
      }
      inside = false;
      double share = Math.max(0, Math.min(1, (pu * du + pv * dv) / (du * du + dv * dv)));
      double offU = pu - share * du;
      double offV = pv - share * dv;
      double square = offU * offU + offV * offV;
      if (square < least) {
        least = square;
        best = new double[] {us[i] + share * du, vs[i] + share * dv};
      }
    }
    return inside ? new double[] {u, v} : best;
  }
}
