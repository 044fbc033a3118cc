package org.counterpull.order;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.special.Erf;
import org.counterpull.contact.LinePath;
import org.counterpull.cooling.Conductor;
import org.counterpull.stock.Flat;
import org.counterpull.stock.Plate;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.PartMetal;

/**
 * A part unrolled to a rectangle of constant thickness, and how warm a patch of it makes another
 * place.
 *
 * <p><b>Formula:</b> {@code T - T0 = E/(d rc) X(u,t) Y(v,t) exp(-b t)}; X and Y are the densities
 * of a uniform source between two insulated ends, by mirror images or waves. On a wide part it
 * becomes the thin plate, on a narrow one the bar, and after a long time the lumped body with
 * {@code b = h A_s/(m c)}.
 *
 * <p><b>Source:</b> derived; products of the one-dimensional solutions are exact for a rectangle:
 * Carslaw and Jaeger, Conduction of Heat in Solids, chapters on products of solutions and on
 * images, from memory. <b>Valid for:</b> constant properties and film; no heat passes on to other
 * parts, which makes a wait on a small part rather too long. A tube or open section counts as its
 * developed width with all its lengthwise runs on one line, likewise on the safe side.
 *
 * @param lengthMm along the part
 * @param widthMm developed width
 * @param thicknessMm thinnest wall
 * @param lossSurfaceMm2 surface that air reaches
 * @param part the part
 */
record Sheet(
    double lengthMm, double widthMm, double thicknessMm, double lossSurfaceMm2, Part part) {
  private static final double MM3_PER_M3 = 1e9;
  private static final double MM2_PER_M2 = 1e6;
  private static final double LEAST_MM = 1;
  private static final double SERIES_FROM = 0.6;
  private static final double OUT_OF_REACH = 5;

  /** A rectangle on the sheet, from the corner at its left front, mm. */
  record Patch(double u0Mm, double u1Mm, double v0Mm, double v1Mm) {
    double uMm(double share) {
      return u0Mm + share * (u1Mm - u0Mm);
    }

    double vMm(double share) {
      return v0Mm + share * (v1Mm - v0Mm);
    }
  }

  static Sheet of(Part part) {
    double volumeMm3 = PartMass.kg(part) / PartMetal.densityKgPerM3(part) * MM3_PER_M3;
    double thicknessMm = part.stock().thinnestMm();
    double lengthMm = part.lengthMm();
    double widthMm = volumeMm3 / (thicknessMm * lengthMm);
    boolean closed = part.stock() instanceof RoundTube || part.stock() instanceof RectangularTube;
    double edgesMm2 = closed ? 0 : 2 * thicknessMm * (lengthMm + widthMm);
    double facesMm2 = (closed ? 1 : 2) * lengthMm * widthMm;
    return new Sheet(lengthMm, widthMm, thicknessMm, facesMm2 + edgesMm2, part);
  }

  /** Where a line lies on the sheet. */
  Patch patch(LinePath path) {
    Vector3D start = part.frame().into(path.start());
    Vector3D middle = part.frame().into(path.at(path.lengthMm() / 2));
    Vector3D end = part.frame().into(path.end());
    double u0Mm = least(start.getX(), middle.getX(), end.getX());
    double u1Mm = -least(-start.getX(), -middle.getX(), -end.getX());
    if (part.stock() instanceof Flat || part.stock() instanceof Plate) {
      double v0Mm = least(start.getY(), middle.getY(), end.getY()) + widthMm / 2;
      double v1Mm = widthMm / 2 - least(-start.getY(), -middle.getY(), -end.getY());
      return patch(u0Mm, u1Mm, v0Mm, v1Mm);
    }
    boolean lengthwise = u1Mm - u0Mm > path.lengthMm() / 2;
    double halfMm = lengthwise ? 0 : Math.min(widthMm, path.lengthMm()) / 2;
    return patch(u0Mm, u1Mm, widthMm / 2 - halfMm, widthMm / 2 + halfMm);
  }

  private Patch patch(double u0Mm, double u1Mm, double v0Mm, double v1Mm) {
    double[] u = inside(u0Mm, u1Mm, lengthMm);
    double[] v = inside(v0Mm, v1Mm, widthMm);
    return new Patch(u[0], u[1], v[0], v[1]);
  }

  /** An interval of at least 1 mm within 0 to the extent. */
  private static double[] inside(double lowMm, double highMm, double extentMm) {
    double leastMm = Math.min(LEAST_MM, extentMm);
    double from = Math.max(0, Math.min(lowMm, extentMm - leastMm));
    double to = Math.min(extentMm, Math.max(highMm, from + leastMm));
    return new double[] {from, to};
  }

  private static double least(double first, double second, double third) {
    return Math.min(first, Math.min(second, third));
  }

  /**
   * Rise at a place, K.
   *
   * @param heatJ heat put into the patch at an instant
   * @param source the patch
   * @param uMm place along the part
   * @param vMm place across it
   * @param ageS time since, above 0
   * @param metal properties
   * @param filmWPerM2K film coefficient with radiation
   */
  double riseK(
      double heatJ,
      Patch source,
      double uMm,
      double vMm,
      double ageS,
      Conductor metal,
      double filmWPerM2K) {
    double capacityJPerK = metal.heatCapacityJPerMm3K() * thicknessMm * lengthMm * widthMm;
    double lossPerS = filmWPerM2K / MM2_PER_M2 * lossSurfaceMm2 / capacityJPerK;
    double spreadMm = Math.sqrt(4 * metal.diffusivityMm2PerS() * ageS);
    return heatJ
        / (thicknessMm * metal.heatCapacityJPerMm3K())
        * perMm(uMm, source.u0Mm, source.u1Mm, lengthMm, spreadMm)
        * perMm(vMm, source.v0Mm, source.v1Mm, widthMm, spreadMm)
        * Math.exp(-lossPerS * ageS);
  }

  /** Density at x of what lay evenly between a and b, with insulated ends at 0 and the extent. */
  static double perMm(double x, double a, double b, double extentMm, double spreadMm) {
    // The two series are the same function; each is used where a few of its terms are enough.
    return spreadMm < SERIES_FROM * extentMm
        ? byImages(x, a, b, extentMm, spreadMm)
        : byWaves(x, a, b, extentMm, spreadMm);
  }

  private static double byImages(double x, double a, double b, double extentMm, double spreadMm) {
    double sum = 0;
    for (int i = -2; i <= 2; i++) {
      double from = x - 2 * i * extentMm;
      sum += between((from - b) / spreadMm, (from - a) / spreadMm);
      sum += between((from + a) / spreadMm, (from + b) / spreadMm);
    }
    return sum / (2 * (b - a));
  }

  private static double between(double low, double high) {
    return low > OUT_OF_REACH || high < -OUT_OF_REACH ? 0 : Erf.erf(high) - Erf.erf(low);
  }

  private static double byWaves(double x, double a, double b, double extentMm, double spreadMm) {
    double sum = 1;
    double decay = Math.PI * spreadMm / (2 * extentMm);
    for (int n = 1; n * decay < OUT_OF_REACH; n++) {
      double wave = n * Math.PI / extentMm;
      double mean = (Math.sin(wave * b) - Math.sin(wave * a)) / (wave * (b - a));
      sum += 2 * Math.cos(wave * x) * mean * Math.exp(-n * n * decay * decay);
    }
    return sum / extentMm;
  }
}
