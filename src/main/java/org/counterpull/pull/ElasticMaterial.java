package org.counterpull.pull;

/**
 * Isotropic linear elasticity.
 *
 * @param elasticModulusMPa modulus of elasticity, N/mm2
 * @param poisson Poisson's ratio, 0 up to below 0.5
 */
public record ElasticMaterial(double elasticModulusMPa, double poisson) {
  public static final ElasticMaterial STEEL = new ElasticMaterial(206_000, 0.3);

  public ElasticMaterial {
    if (!(elasticModulusMPa > 0 && elasticModulusMPa < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "modulus of elasticity " + elasticModulusMPa + " N/mm2 must be above zero and finite");
    }
    if (!(poisson >= 0 && poisson < 0.5)) {
      throw new IllegalArgumentException("Poisson's ratio " + poisson + " must be 0 to below 0.5");
    }
  }

  /** Shear modulus, N/mm2. */
  public double shearModulusMPa() {
    return elasticModulusMPa / (2 * (1 + poisson));
  }
}
