package org.counterpull.mount;

import java.util.stream.DoubleStream;

/**
 * How the bore lies after the pull: radial displacement by section and place around, in parts that
 * are known each with its own band.
 */
final class BoreShape {
  private static final int GAUGE = 72;

  private final double[] sections;
  private final double[] places;
  private final double[][][] parts;
  private final double[] low;
  private final double[] high;

  /**
   * The shape.
   *
   * @param sections places along the tube
   * @param places angles around, rising, the first -pi
   * @param parts radial displacements, by part, section and place, mm
   * @param low least expected over central value of each part
   * @param high greatest expected over central value of each part
   */
  BoreShape(double[] sections, double[] places, double[][][] parts, double[] low, double[] high) {
    this.sections = sections;
    this.places = places;
    this.parts = parts;
    this.low = low;
    this.high = high;
  }

  /** What moves most between two places along the tube; nothing where the shell doesn't reach. */
  BoreMovement worst(double fromMm, double toMm) {
    double low = Math.max(fromMm, sections[0]);
    double high = Math.min(toMm, sections[sections.length - 1]);
    if (low > high) {
      return BoreMovement.NONE;
    }
    BoreMovement worst = BoreMovement.NONE;
    for (double z : looks(low, high)) {
      BoreMovement here = section(z);
      worst = here.changeMm().value() > worst.changeMm().value() ? here : worst;
    }
    return worst;
  }

  /** Both ends and the sections between them. */
  private double[] looks(double low, double high) {
    return DoubleStream.concat(
            DoubleStream.of(low, high), DoubleStream.of(sections).filter(z -> z > low && z < high))
        .sorted()
        .toArray();
  }

  private BoreMovement section(double z) {
    double[] whole = new double[GAUGE];
    Span change = Span.ZERO;
    Span inward = Span.ZERO;
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (int k = 0; k < GAUGE; k++) {
      double angle = -Math.PI + 2 * Math.PI * k / GAUGE;
      for (int p = 0; p < parts.length; p++) {
        whole[k] += at(p, z, angle);
      }
    }
    for (int k = 0; k < GAUGE / 2; k++) {
      double angle = -Math.PI + 2 * Math.PI * k / GAUGE;
      double diameter = whole[k] + whole[k + GAUGE / 2];
      least = Math.min(least, diameter);
      most = Math.max(most, diameter);
      Span here = banded(z, angle, Math.signum(diameter));
      change = here.value() > change.value() ? here : change;
      inward = diameter < 0 && here.value() > inward.value() ? here : inward;
    }
    double mean = DoubleStream.of(whole).average().orElse(0);
    return new BoreMovement(z, change, inward, 2 * mean, most - least, dent(whole, mean));
  }

  /** Change of the diameter at an angle, as a size, with its band. */
  private Span banded(double z, double angle, double sign) {
    double sum = 0;
    double above = 0;
    double below = 0;
    for (int p = 0; p < parts.length; p++) {
      double part = sign * (at(p, z, angle) + at(p, z, angle + Math.PI));
      sum += part;
      double up = part > 0 ? (high[p] - 1) * part : (low[p] - 1) * part;
      double down = part > 0 ? (1 - low[p]) * part : (1 - high[p]) * part;
      above = Math.hypot(above, up);
      below = Math.hypot(below, down);
    }
    return new Span(Math.max(0, sum - below), Math.max(0, sum), Math.max(0, sum + above));
  }

  /** Depth of the deepest place below the circle that fits best. */
  private static double dent(double[] whole, double mean) {
    double cos = 0;
    double sin = 0;
    for (int k = 0; k < GAUGE; k++) {
      double angle = -Math.PI + 2 * Math.PI * k / GAUGE;
      cos += 2.0 / GAUGE * whole[k] * Math.cos(angle);
      sin += 2.0 / GAUGE * whole[k] * Math.sin(angle);
    }
    double deepest = 0;
    for (int k = 0; k < GAUGE; k++) {
      double angle = -Math.PI + 2 * Math.PI * k / GAUGE;
      double off = whole[k] - mean - cos * Math.cos(angle) - sin * Math.sin(angle);
      deepest = Math.max(deepest, -off);
    }
    return deepest;
  }

  private double at(int part, double z, double angleRad) {
    int j = 0;
    while (j + 2 < sections.length && sections[j + 1] <= z) {
      j++;
    }
    double share = (z - sections[j]) / (sections[j + 1] - sections[j]);
    return (1 - share) * at(parts[part][j], angleRad) + share * at(parts[part][j + 1], angleRad);
  }

  private double at(double[] row, double angleRad) {
    double angle = angleRad;
    while (angle >= Math.PI - 1e-12) {
      angle -= 2 * Math.PI;
    }
    int i = 0;
    while (i + 1 < places.length && places[i + 1] <= angle) {
      i++;
    }
    int next = (i + 1) % places.length;
    double upper = next == 0 ? Math.PI : places[next];
    double share = (angle - places[i]) / (upper - places[i]);
    return row[i] + share * (row[next] - row[i]);
  }
}
