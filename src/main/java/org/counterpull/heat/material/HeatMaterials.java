package org.counterpull.heat.material;

import java.util.function.DoubleUnaryOperator;

/** The metals that the heat engine knows by name, from -100 C through melting. */
public final class HeatMaterials {
  private HeatMaterials() {}

  /** Carbon steel: EN 1993-1-2 to 1200 C, then {@code melting.csv}. */
  public static ThermalMaterial carbonSteel() {
    return melting(
        "carbon steel",
        "carbon steel",
        CarbonSteelHeat.DENSITY_KG_PER_M3,
        CarbonSteelHeat.UPPER_LIMIT_C,
        CarbonSteelHeat::specificHeatJPerKgK,
        CarbonSteelHeat::conductivityWPerMK);
  }

  /** Austenitic stainless steel: EN 1993-1-2 Annex C to 1200 C, then {@code melting.csv}. */
  public static ThermalMaterial stainless() {
    return melting(
        "stainless",
        "stainless",
        StainlessHeat.DENSITY_KG_PER_M3,
        StainlessHeat.UPPER_LIMIT_C,
        StainlessHeat::specificHeatJPerKgK,
        StainlessHeat::conductivityWPerMK);
  }

  /** Aluminium 3xxx and 6xxx: EN 1999-1-2 to 500 C, then {@code melting.csv}. */
  public static ThermalMaterial aluminium6xxx() {
    return melting(
        "aluminium 6xxx",
        "aluminium",
        AluminiumHeat.DENSITY_KG_PER_M3,
        AluminiumHeat.UPPER_LIMIT_C,
        AluminiumHeat::specificHeatJPerKgK,
        AluminiumHeat::conductivity6xxxWPerMK);
  }

  /** Aluminium 5xxx and 7xxx: EN 1999-1-2 to 500 C, then {@code melting.csv}. */
  public static ThermalMaterial aluminium5xxx() {
    return melting(
        "aluminium 5xxx",
        "aluminium",
        AluminiumHeat.DENSITY_KG_PER_M3,
        AluminiumHeat.UPPER_LIMIT_C,
        AluminiumHeat::specificHeatJPerKgK,
        AluminiumHeat::conductivity5xxxWPerMK);
  }

  private static ThermalMaterial melting(
      String name,
      String meltingRow,
      double densityKgPerM3,
      double upperLimitC,
      DoubleUnaryOperator specificHeat,
      DoubleUnaryOperator conductivity) {
    Melting melting = MeltingTable.of(meltingRow);
    // The standards' laws end at upperLimitC: above it the last solid value is held.
    return ThermalMaterial.of(
        name,
        densityKgPerM3,
        t -> melting.specificHeatJPerKgK(t, specificHeat.applyAsDouble(Math.min(t, upperLimitC))),
        t -> melting.conductivityWPerMK(t, conductivity.applyAsDouble(Math.min(t, upperLimitC))));
  }
}
