package org.counterpull.heat.material;

import org.counterpull.material.Metal;

/**
 * The metals that the heat engine knows by name, from cold through melting: {@link Metal} inside
 * its standard's range, its end values and {@code melting.csv} beyond.
 */
public final class HeatMaterials {
  private HeatMaterials() {}

  /** A metal by the standards, with melting. */
  public static ThermalMaterial of(Metal metal) {
    return switch (metal) {
      case CARBON_STEEL -> melting("carbon steel", metal, MeltingTable.of("carbon steel"));
      case STAINLESS_STEEL -> melting("stainless steel", metal, MeltingTable.of("stainless"));
      case ALUMINIUM_6XXX -> melting("aluminium 6xxx", metal, MeltingTable.of("aluminium"));
      case ALUMINIUM_5XXX -> melting("aluminium 5xxx", metal, MeltingTable.of("aluminium"));
    };
  }

  public static ThermalMaterial carbonSteel() {
    return of(Metal.CARBON_STEEL);
  }

  public static ThermalMaterial stainless() {
    return of(Metal.STAINLESS_STEEL);
  }

  /** 3xxx and 6xxx alloys. */
  public static ThermalMaterial aluminium6xxx() {
    return of(Metal.ALUMINIUM_6XXX);
  }

  /** 5xxx and 7xxx alloys. */
  public static ThermalMaterial aluminium5xxx() {
    return of(Metal.ALUMINIUM_5XXX);
  }

  private static ThermalMaterial melting(String name, Metal metal, Melting melting) {
    return ThermalMaterial.of(
        name,
        metal.densityKgPerM3(),
        t -> melting.specificHeatJPerKgK(t, metal.specificHeatJPerKgK(t)),
        t -> melting.conductivityWPerMK(t, metal.conductivityWPerMK(t)));
  }
}
