package org.counterpull.shrinkage;

import java.util.List;
import java.util.Map;
import org.counterpull.quantity.Require;

/**
 * What shrinkage asks of a material: mean values between 20 and 600 C.
 *
 * @param name as practitioners say it
 * @param elasticModulusMPa modulus of elasticity, N/mm2
 * @param expansionPerK linear expansion, 1/K
 * @param heatCapacityJPerMm3K volumetric heat, J/mm3K
 */
public record ShrinkageMaterial(
    String name, double elasticModulusMPa, double expansionPerK, double heatCapacityJPerMm3K) {

  /** All material sets, in the order of the table. */
  public static final List<ShrinkageMaterial> ALL =
      Rows.of("materials.csv").stream().map(ShrinkageMaterial::from).toList();

  /** C and C-Mn steel. */
  public static final ShrinkageMaterial CARBON_STEEL = named("carbon steel");

  public ShrinkageMaterial {
    Require.positive("modulus of elasticity", elasticModulusMPa, "N/mm2");
    Require.positive("linear expansion", expansionPerK, "1/K");
    Require.positive("volumetric heat", heatCapacityJPerMm3K, "J/mm3K");
  }

  /** The set of that name. */
  public static ShrinkageMaterial named(String name) {
    return ALL.stream()
        .filter(material -> material.name.equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no shrinkage data for " + name));
  }

  /** Expansion over volumetric heat: the volume by which a joule makes the metal grow, mm3/J. */
  public double expansionPerHeatMm3PerJ() {
    return expansionPerK / heatCapacityJPerMm3K;
  }

  private static ShrinkageMaterial from(Map<String, String> row) {
    return new ShrinkageMaterial(
        row.get("name"),
        Double.parseDouble(row.get("elasticModulusMPa")),
        Double.parseDouble(row.get("expansionPerK")),
        Double.parseDouble(row.get("heatCapacityJPerMm3K")));
  }
}
