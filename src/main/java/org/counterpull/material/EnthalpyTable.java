package org.counterpull.material;

import java.util.Arrays;

/**
 * Enthalpy of a metal from 20 C in kJ/kg, and its inverse: the integral of the specific heat on a
 * fine grid, so that a solver passes the peak at 735 C without losing energy.
 *
 * <p><b>Valid for:</b> the range of the {@link Metal}; beyond its ends the specific heat there is
 * kept.
 */
public final class EnthalpyTable {
  private static final double REFERENCE_C = 20;
  private static final double GRID_K = 0.5;
  private static final int SLICES = 8;
  private static final double KJ = 1e-3;

  private final Metal metal;
  private final double[] enthalpy;

  /** Integrates the specific heat of a metal. */
  public EnthalpyTable(Metal metal) {
    this.metal = metal;
    int cells = (int) Math.round((metal.highC() - REFERENCE_C) / GRID_K);
    enthalpy = new double[cells + 1];
    for (int i = 0; i < cells; i++) {
      enthalpy[i + 1] = enthalpy[i] + cell(REFERENCE_C + i * GRID_K);
    }
  }

  /** Midpoint rule, which never evaluates at a step of the specific heat. */
  private double cell(double fromC) {
    double sum = 0;
    for (int j = 0; j < SLICES; j++) {
      sum += metal.specificHeatJPerKgK(fromC + (j + 0.5) * GRID_K / SLICES);
    }
    return sum * GRID_K / SLICES * KJ;
  }

  /** Enthalpy in kJ/kg, zero at 20 C. */
  public double enthalpyKJPerKg(double temperatureC) {
    double position = (temperatureC - REFERENCE_C) / GRID_K;
    int last = enthalpy.length - 1;
    if (position <= 0) {
      return (temperatureC - REFERENCE_C) * metal.specificHeatJPerKgK(REFERENCE_C) * KJ;
    }
    if (position >= last) {
      double beyondK = temperatureC - metal.highC();
      return enthalpy[last] + beyondK * metal.specificHeatJPerKgK(metal.highC()) * KJ;
    }
    int i = (int) position;
    return enthalpy[i] + (position - i) * (enthalpy[i + 1] - enthalpy[i]);
  }

  /** Temperature in C at an enthalpy in kJ/kg. */
  public double temperatureC(double enthalpyKJPerKg) {
    int last = enthalpy.length - 1;
    if (enthalpyKJPerKg <= 0) {
      return REFERENCE_C + enthalpyKJPerKg / (metal.specificHeatJPerKgK(REFERENCE_C) * KJ);
    }
    if (enthalpyKJPerKg >= enthalpy[last]) {
      double beyond = enthalpyKJPerKg - enthalpy[last];
      return metal.highC() + beyond / (metal.specificHeatJPerKgK(metal.highC()) * KJ);
    }
    int found = Arrays.binarySearch(enthalpy, enthalpyKJPerKg);
    int i = found >= 0 ? found : -found - 2;
    double part = (enthalpyKJPerKg - enthalpy[i]) / (enthalpy[i + 1] - enthalpy[i]);
    return REFERENCE_C + (i + part) * GRID_K;
  }
}
