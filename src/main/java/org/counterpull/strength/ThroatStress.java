package org.counterpull.strength;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.Require;

/**
 * Stresses on the throat plane of a fillet.
 *
 * @param normalMPa sigma, square to the throat
 * @param acrossMPa tau, in the throat and across the weld
 * @param alongMPa tau, in the throat and along the weld
 */
public record ThroatStress(double normalMPa, double acrossMPa, double alongMPa) {

  /**
   * A force per length on a throat.
   *
   * @param nPerMm force per length, N/mm
   * @param along unit vector along the weld
   * @param opening vector out of the corner, in the middle between the faces: the throat plane
   *     holds it and the weld
   * @param throatMm above 0
   */
  public static ThroatStress of(
      Vector3D nPerMm, Vector3D along, Vector3D opening, double throatMm) {
    Require.positive("throat", throatMm, "mm");
    Vector3D out = opening.subtract(new Vector3D(opening.dotProduct(along), along)).normalize();
    Vector3D normal = along.crossProduct(out);
    return new ThroatStress(
        nPerMm.dotProduct(normal) / throatMm,
        nPerMm.dotProduct(out) / throatMm,
        nPerMm.dotProduct(along) / throatMm);
  }

  /** {@code sqrt(sigma^2 + 3 (tau^2 + tau^2))}, MPa. */
  public double equivalentMPa() {
    return Math.sqrt(normalMPa * normalMPa + 3 * (acrossMPa * acrossMPa + alongMPa * alongMPa));
  }
}
