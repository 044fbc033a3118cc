package org.counterpull.pull;

/**
 * What a beam's bending, shear and torsion ask of its section, in axes y and z through the
 * centroid.
 *
 * @param areaMm2 area, mm2
 * @param iyMm4 integral of z2, mm4: bending about y
 * @param izMm4 integral of y2, mm4: bending about z
 * @param iyzMm4 integral of y z, mm4; not zero where the principal axes are inclined
 * @param torsionMm4 constant of uniform torsion, mm4; warping is left out
 * @param shearAreaYMm2 area that carries a shear force along y, mm2
 * @param shearAreaZMm2 area that carries a shear force along z, mm2
 * @param shearCentreYMm shear centre from the centroid along y, mm
 * @param shearCentreZMm shear centre from the centroid along z, mm
 */
public record SectionStiffness(
    double areaMm2,
    double iyMm4,
    double izMm4,
    double iyzMm4,
    double torsionMm4,
    double shearAreaYMm2,
    double shearAreaZMm2,
    double shearCentreYMm,
    double shearCentreZMm) {

  public SectionStiffness {
    positive("area", areaMm2);
    positive("second moment of area about y", iyMm4);
    positive("second moment of area about z", izMm4);
    positive("torsion constant", torsionMm4);
    positive("shear area along y", shearAreaYMm2);
    positive("shear area along z", shearAreaZMm2);
    positive("least second moment of area, squared,", iyMm4 * izMm4 - iyzMm4 * iyzMm4);
  }

  private static void positive(String what, double value) {
    if (!(value > 0)) {
      throw new IllegalArgumentException(what + " " + value + " must be above zero");
    }
  }

  /**
   * Strains of a unit length from section forces, both in the order N, Vy, Vz, T, My, Mz about the
   * centroid.
   */
  double[][] compliance(ElasticMaterial material) {
    double e = material.elasticModulusMPa();
    double g = material.shearModulusMPa();
    double[][] c = new double[6][6];
    c[0][0] = 1 / (e * areaMm2);
    c[1][1] = 1 / (g * shearAreaYMm2);
    c[2][2] = 1 / (g * shearAreaZMm2);
    // Torque about the shear centre: T - ys Vz + zs Vy.
    double[] torque = {0, shearCentreZMm, -shearCentreYMm, 1, 0, 0};
    for (int i = 1; i < 4; i++) {
      for (int j = 1; j < 4; j++) {
        c[i][j] += torque[i] * torque[j] / (g * torsionMm4);
      }
    }
    double determinant = e * (iyMm4 * izMm4 - iyzMm4 * iyzMm4);
    c[4][4] = izMm4 / determinant;
    c[5][5] = iyMm4 / determinant;
    c[4][5] = iyzMm4 / determinant;
    c[5][4] = iyzMm4 / determinant;
    return c;
  }

  /**
   * Elongation and turns of the axis where a strip of the section shrinks along it: components as
   * in {@link #compliance}, per mm of shrinkage and mm2 of the strip.
   *
   * @param yMm centroid of the strip along y, mm
   * @param zMm centroid of the strip along z, mm
   */
  double[] jumpOfShrunkStrip(double yMm, double zMm) {
    double determinant = iyMm4 * izMm4 - iyzMm4 * iyzMm4;
    return new double[] {
      -1 / areaMm2,
      0,
      0,
      0,
      -(izMm4 * zMm - iyzMm4 * yMm) / determinant,
      -(iyzMm4 * zMm - iyMm4 * yMm) / determinant
    };
  }
}
