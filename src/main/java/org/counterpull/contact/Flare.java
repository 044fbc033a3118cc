package org.counterpull.contact;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The groove beside a round surface and another that touch along a line, in the plane square to it.
 *
 * @param radiusMm of the round surface
 * @param otherRadiusMm of the other, infinite for a flat
 * @param rootMm distance between them where they are closest
 */
record Flare(double radiusMm, double otherRadiusMm, double rootMm) {
  /** How much more open than at its root a groove is where its angle is taken, mm. */
  static final double OPEN_MM = 2;

  /** Distance between the surfaces at a place beside the root. */
  double openingMm(double besideMm) {
    return rootMm + drop(radiusMm, besideMm) + drop(otherRadiusMm, besideMm);
  }

  /** Where the surfaces are that far apart; 0 when they are so at the root. */
  double besideMm(double openingMm) {
    double least = Math.min(radiusMm, otherRadiusMm);
    if (openingMm <= rootMm) {
      return 0;
    }
    if (openingMm(least) <= openingMm) {
      return least;
    }
    UnivariateFunction excess = beside -> openingMm(beside) - openingMm;
    return new BrentSolver(1e-13, 1e-12).solve(200, excess, 0, least);
  }

  /** Where the groove's angle is taken. */
  double mouthMm() {
    return besideMm(rootMm + OPEN_MM);
  }

  /** How far the round surface has turned away at a place beside the root, radians. */
  double turnRad(double besideMm) {
    return Math.asin(Math.min(1, besideMm / radiusMm));
  }

  /** The same for the other surface, 0 for a flat. */
  double otherTurnRad(double besideMm) {
    return Math.asin(Math.min(1, besideMm / otherRadiusMm));
  }

  /** Height of a round surface above its own tangent plane at the root. */
  static double drop(double radiusMm, double besideMm) {
    if (Double.isInfinite(radiusMm)) {
      return 0;
    }
    double root = Math.sqrt(Math.max(0, radiusMm * radiusMm - besideMm * besideMm));
    return besideMm * besideMm / (radiusMm + root);
  }
}
