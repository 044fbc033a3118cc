package org.counterpull.groove;

import org.counterpull.quantity.Require;

/**
 * Sections and volumes of weld metal beside the plain groove. Derived, plain geometry; each returns
 * mm2 or mm3 as its name says.
 */
public final class WeldSections {
  private static final double PARABOLA = 2.0 / 3;

  private WeldSections() {}

  /**
   * Cap or root bead with a parabolic outline, {@code 2/3 w h}.
   *
   * @param widthMm width over the toes, mm
   * @param heightMm height in the middle, mm
   */
  public static double capMm2(double widthMm, double heightMm) {
    Require.notNegative("bead width", widthMm, "mm");
    Require.notNegative("bead height", heightMm, "mm");
    return PARABOLA * widthMm * heightMm;
  }

  /**
   * Two unequal V grooves meeting at one root face.
   *
   * @param thicknessMm plate, mm
   * @param gapMm root gap, mm
   * @param firstDepthMm depth from the first face, mm
   * @param secondDepthMm depth from the second face, mm; both together at most the thickness
   * @param includedDegrees included angle of both
   */
  public static double unequalDoubleVMm2(
      double thicknessMm,
      double gapMm,
      double firstDepthMm,
      double secondDepthMm,
      double includedDegrees) {
    Require.positive("thickness", thicknessMm, "mm");
    Require.notNegative("root gap", gapMm, "mm");
    Require.notNegative("first depth", firstDepthMm, "mm");
    Require.within("second depth", secondDepthMm, 0, thicknessMm - firstDepthMm, "mm");
    double tan = Math.tan(Math.toRadians(includedDegrees) / 2);
    return gapMm * thicknessMm
        + (firstDepthMm * firstDepthMm + secondDepthMm * secondDepthMm) * tan;
  }

  /**
   * Steep-flanked V on a backing, {@code b t + t^2 tan(beta)}.
   *
   * @param thicknessMm plate, mm
   * @param gapMm root gap, mm
   * @param edgeDegrees angle of each edge
   */
  public static double steepVOnBackingMm2(double thicknessMm, double gapMm, double edgeDegrees) {
    return GrooveArea.mm2(Groove.straight(Preparation.V, thicknessMm, gapMm, 0, 2 * edgeDegrees));
  }

  /**
   * Flare-bevel filled flush, {@code R^2 (1 - pi/4)}; a flare-V is two of them.
   *
   * @param radiusMm outside radius of the rounded part, mm
   */
  public static double flareBevelMm2(double radiusMm) {
    Require.positive("outside radius", radiusMm, "mm");
    return radiusMm * radiusMm * (1 - Math.PI / 4);
  }

  /** Flare-V filled flush, two flare-bevels. */
  public static double flareVMm2(double radiusMm) {
    return 2 * flareBevelMm2(radiusMm);
  }

  /** Plug weld through a round hole. */
  public static double plugMm3(double holeMm, double thicknessMm) {
    Require.positive("hole", holeMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    return Math.PI * holeMm * holeMm / 4 * thicknessMm;
  }

  /** Slot weld with round ends. */
  public static double slotMm3(double lengthMm, double widthMm, double thicknessMm) {
    Require.positive("slot width", widthMm, "mm");
    Require.positive("thickness", thicknessMm, "mm");
    if (!(lengthMm >= widthMm)) {
      throw new IllegalArgumentException(
          "slot length is " + lengthMm + " mm: it must be at least its width, " + widthMm + " mm");
    }
    return (widthMm * (lengthMm - widthMm) + Math.PI * widthMm * widthMm / 4) * thicknessMm;
  }

  /**
   * Butt of two round bars, planar bevels from both sides to a knife edge, both sides together:
   * {@code 8/3 r^3 tan(alpha/2)}.
   */
  public static double barDoubleBevelMm3(double diameterMm, double includedDegrees) {
    Require.positive("bar diameter", diameterMm, "mm");
    double radiusMm = diameterMm / 2;
    return 8.0 / 3 * Math.pow(radiusMm, 3) * Math.tan(Math.toRadians(includedDegrees) / 2);
  }

  /**
   * Butt of two round bars turned to 45 degree cones that meet at their points, {@code 4/3 pi r^3}.
   */
  public static double barConesMm3(double diameterMm) {
    Require.positive("bar diameter", diameterMm, "mm");
    return 4.0 / 3 * Math.PI * Math.pow(diameterMm / 2, 3);
  }
}
