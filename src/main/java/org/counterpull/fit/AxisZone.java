package org.counterpull.fit;

import java.util.List;
import org.counterpull.quantity.Require;

/**
 * The thinnest cylinder round points that should lie on one axis: how straight a row of bores is to
 * a straight pin.
 *
 * <p>Of all lines, the one whose farthest point is nearest: {@code R = min over a, b of max |d_i -
 * a - b x_i|}, d_i the offset of point i in the two directions square to the axis, x_i its place
 * along it. Found by weighted least squares, each weight multiplied by its own residual until the
 * farthest points alone count; the weighted mean residual never exceeds R and the farthest residual
 * never falls below it, so both close in on it.
 *
 * <p><b>Source:</b> from memory: ISO 1101, straightness of an axis (the zone); C. L. Lawson,
 * thesis, UCLA 1961 (the weights). <b>Valid for:</b> offsets small beside the row's length; two
 * points or fewer always lie on a line. The radius that is given is never too small and at most a
 * millionth of the largest offset, or of what 20 000 rounds leave, too large.
 *
 * @param radiusMm of the cylinder
 * @param leastMm what the radius can't be below
 * @param points each point's offset from the cylinder's axis, in the order given
 */
public record AxisZone(double radiusMm, double leastMm, List<Off> points) {
  private static final int ROUNDS = 20_000;
  private static final double CLOSE = 1e-6;

  public AxisZone {
    points = List.copyOf(points);
  }

  /**
   * An offset square to the axis.
   *
   * @param alongMm place along the axis
   * @param oneMm in the first direction
   * @param otherMm in the second
   */
  public record Off(double alongMm, double oneMm, double otherMm) {
    public Off {
      Require.finite("place along the axis", alongMm, "mm");
      Require.finite("offset", oneMm, "mm");
      Require.finite("offset", otherMm, "mm");
    }

    /** How far off it is. */
    public double mm() {
      return Math.hypot(oneMm, otherMm);
    }
  }

  /** The zone of some points, at least one. */
  public static AxisZone of(List<Off> given) {
    if (given.isEmpty()) {
      throw new IllegalArgumentException("an axis needs at least 1 point");
    }
    double[] weights = new double[given.size()];
    java.util.Arrays.fill(weights, 1.0 / weights.length);
    double size = given.stream().mapToDouble(Off::mm).max().orElseThrow();
    AxisZone best = null;
    double least = 0;
    for (int round = 0; round < ROUNDS; round++) {
      List<Off> off = residuals(given, weights);
      double farthest = off.stream().mapToDouble(Off::mm).max().orElseThrow();
      least = Math.max(least, mean(off, weights));
      if (best == null || farthest < best.radiusMm) {
        best = new AxisZone(farthest, 0, off);
      }
      if (best.radiusMm - least <= CLOSE * size || !reweighted(weights, off)) {
        break;
      }
    }
    return new AxisZone(best.radiusMm, Math.min(least, best.radiusMm), best.points);
  }

  private static double mean(List<Off> off, double[] weights) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * off.get(i).mm() * off.get(i).mm();
    }
    return Math.sqrt(sum);
  }

  private static boolean reweighted(double[] weights, List<Off> off) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] *= off.get(i).mm();
      sum += weights[i];
    }
    for (int i = 0; i < weights.length && sum > 0; i++) {
      weights[i] /= sum;
    }
    return sum > 0;
  }

  /** What is left of the offsets beside the line that fits them best with those weights. */
  private static List<Off> residuals(List<Off> given, double[] weights) {
    double along = 0;
    double one = 0;
    double other = 0;
    for (int i = 0; i < weights.length; i++) {
      along += weights[i] * given.get(i).alongMm();
      one += weights[i] * given.get(i).oneMm();
      other += weights[i] * given.get(i).otherMm();
    }
    double square = 0;
    double oneSlope = 0;
    double otherSlope = 0;
    for (int i = 0; i < weights.length; i++) {
      double x = given.get(i).alongMm() - along;
      square += weights[i] * x * x;
      oneSlope += weights[i] * x * given.get(i).oneMm();
      otherSlope += weights[i] * x * given.get(i).otherMm();
    }
    double inverse = square > 0 ? 1 / square : 0;
    double[] line = {along, one, other, oneSlope * inverse, otherSlope * inverse};
    return given.stream().map(point -> beside(point, line)).toList();
  }

  private static Off beside(Off point, double[] line) {
    double x = point.alongMm() - line[0];
    return new Off(
        point.alongMm(),
        point.oneMm() - line[1] - line[3] * x,
        point.otherMm() - line[2] - line[4] * x);
  }
}
