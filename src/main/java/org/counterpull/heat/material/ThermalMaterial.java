package org.counterpull.heat.material;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A metal as the solver sees it: temperature and conductivity integral as functions of the enthalpy
 * per volume.
 *
 * <p>The conductivity integral is {@code theta(T) = INT k dT} in W/mm: within one material the flux
 * between two points is the difference of their theta over the distance, exactly, whatever k does
 * in between. Both functions are straight lines between nodes that are evenly spaced in enthalpy,
 * and go on straight beyond the ends; a material with constant properties is therefore exact.
 */
public final class ThermalMaterial {
  private static final int NODES = 2049;
  private static final double LOW_C = -100;
  private static final int SPAN_K = 3100;

  /** Coldest place for which steps are kept stable. */
  private static final double COLDEST_C = -40;

  private static final double TO_J_PER_MM3 = 1e-9;
  private static final double TO_W_PER_MMK = 1e-3;

  private final String name;
  private final double lowJPerMm3;
  private final double nodesPerJ;
  private final double[] tempC = new double[NODES];
  private final double[] theta = new double[NODES];
  private final double greatestDiffusivity;
  private final double greatestKPerJ;
  private final double greatestConductivity;

  private ThermalMaterial(
      String name,
      double densityKgPerM3,
      DoubleUnaryOperator specificHeatJPerKgK,
      DoubleUnaryOperator conductivityWPerMK) {
    this.name = name;
    double[] enthalpy = integral(specificHeatJPerKgK, densityKgPerM3 * TO_J_PER_MM3);
    double[] kIntegral = integral(conductivityWPerMK, TO_W_PER_MMK);
    this.lowJPerMm3 = enthalpy[0];
    double step = (enthalpy[SPAN_K] - enthalpy[0]) / (NODES - 1);
    this.nodesPerJ = 1 / step;
    int row = 0;
    for (int i = 0; i < NODES; i++) {
      double target = enthalpy[0] + i * step;
      while (row < SPAN_K - 1 && enthalpy[row + 1] < target) {
        row++;
      }
      double part = (target - enthalpy[row]) / (enthalpy[row + 1] - enthalpy[row]);
      tempC[i] = LOW_C + row + part;
      theta[i] = kIntegral[row] + part * (kIntegral[row + 1] - kIntegral[row]);
    }
    this.greatestDiffusivity = steepest(theta, 1);
    this.greatestKPerJ = steepest(tempC, 1);
    this.greatestConductivity = steepest(theta, 0);
  }

  /**
   * A material with properties that depend on the temperature.
   *
   * @param name as it is reported
   * @param densityKgPerM3 constant density, positive
   * @param specificHeatJPerKgK specific heat over the temperature in C, positive, latent heat in it
   * @param conductivityWPerMK conductivity over the temperature in C, positive
   */
  public static ThermalMaterial of(
      String name,
      double densityKgPerM3,
      DoubleUnaryOperator specificHeatJPerKgK,
      DoubleUnaryOperator conductivityWPerMK) {
    requirePositive("density", densityKgPerM3, "kg/m3");
    return new ThermalMaterial(name, densityKgPerM3, specificHeatJPerKgK, conductivityWPerMK);
  }

  /** A material with constant properties. */
  public static ThermalMaterial constant(
      String name, double conductivityWPerMK, double densityKgPerM3, double specificHeatJPerKgK) {
    requirePositive("conductivity", conductivityWPerMK, "W/mK");
    requirePositive("specific heat", specificHeatJPerKgK, "J/kgK");
    return of(name, densityKgPerM3, t -> specificHeatJPerKgK, t -> conductivityWPerMK);
  }

  /** A material with constant properties: this one's means between two temperatures. */
  public ThermalMaterial constantBetween(double lowC, double highC) {
    double low = enthalpyJPerMm3(lowC);
    double high = enthalpyJPerMm3(highC);
    double span = highC - lowC;
    double capacity = (high - low) / span;
    double conductivity = (theta(high) - theta(low)) / span;
    return constant(name + ", constant", conductivity / TO_W_PER_MMK, capacity / TO_J_PER_MM3, 1);
  }

  /** Name as it is reported. */
  public String name() {
    return name;
  }

  /** Temperature in C at an enthalpy in J/mm3. */
  public double tempC(double enthalpyJPerMm3) {
    return at(tempC, enthalpyJPerMm3);
  }

  /** Conductivity integral in W/mm at an enthalpy in J/mm3. */
  public double theta(double enthalpyJPerMm3) {
    return at(theta, enthalpyJPerMm3);
  }

  /** Fills {@code out[lo..hi)} with the conductivity integral; the solver's inner loop. */
  public void theta(double[] enthalpyJPerMm3, double[] out, int lo, int hi) {
    for (int p = lo; p < hi; p++) {
      double x = (enthalpyJPerMm3[p] - lowJPerMm3) * nodesPerJ;
      int i = Math.max(0, Math.min(NODES - 2, (int) x));
      double left = theta[i];
      out[p] = left + (x - i) * (theta[i + 1] - left);
    }
  }

  /** Conductivity in W/mmK at an enthalpy in J/mm3. */
  public double conductivityWPerMmK(double enthalpyJPerMm3) {
    int i = node((enthalpyJPerMm3 - lowJPerMm3) * nodesPerJ);
    return (theta[i + 1] - theta[i]) / (tempC[i + 1] - tempC[i]);
  }

  /** Enthalpy in J/mm3 at a temperature in C: the exact inverse of {@link #tempC}. */
  public double enthalpyJPerMm3(double temperatureC) {
    int found = Arrays.binarySearch(tempC, temperatureC);
    int i = Math.max(0, Math.min(NODES - 2, found >= 0 ? found : -found - 2));
    double part = (temperatureC - tempC[i]) / (tempC[i + 1] - tempC[i]);
    return lowJPerMm3 + (i + part) / nodesPerJ;
  }

  /** Greatest diffusivity above -40 C, mm2/s. */
  public double greatestDiffusivityMm2PerS() {
    return greatestDiffusivity;
  }

  /** Greatest rise of temperature per enthalpy above -40 C, K per J/mm3. */
  public double greatestKPerJMm3() {
    return greatestKPerJ;
  }

  /** Greatest conductivity above -40 C, W/mmK. */
  public double greatestConductivityWPerMmK() {
    return greatestConductivity;
  }

  /** Steepest slope over the enthalpy (1) or over the temperature (0). */
  private double steepest(double[] values, int overEnthalpy) {
    double steepest = 0;
    for (int i = 0; i + 1 < NODES; i++) {
      if (tempC[i + 1] > COLDEST_C) {
        double run = overEnthalpy == 1 ? 1 / nodesPerJ : tempC[i + 1] - tempC[i];
        steepest = Math.max(steepest, (values[i + 1] - values[i]) / run);
      }
    }
    return steepest;
  }

  private double at(double[] values, double enthalpyJPerMm3) {
    double x = (enthalpyJPerMm3 - lowJPerMm3) * nodesPerJ;
    int i = node(x);
    return values[i] + (x - i) * (values[i + 1] - values[i]);
  }

  private static int node(double x) {
    return Math.max(0, Math.min(NODES - 2, (int) x));
  }

  /** Integral from 0 C at each whole degree, three Gauss points per degree. */
  private static double[] integral(DoubleUnaryOperator f, double unit) {
    double[] sum = new double[SPAN_K + 1];
    double offset = Math.sqrt(0.15);
    for (int row = 0; row < SPAN_K; row++) {
      double middle = LOW_C + row + 0.5;
      double mean =
          (5 * f.applyAsDouble(middle - offset)
                  + 8 * f.applyAsDouble(middle)
                  + 5 * f.applyAsDouble(middle + offset))
              / 18;
      if (!(mean > 0)) {
        throw new IllegalArgumentException(
            "property must be positive, is " + mean + " at " + middle + " C");
      }
      sum[row + 1] = sum[row] + mean * unit;
    }
    double atZero = sum[(int) -LOW_C];
    for (int row = 0; row <= SPAN_K; row++) {
      sum[row] -= atZero;
    }
    return sum;
  }

  private static void requirePositive(String what, double value, String unit) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(what + " " + value + " " + unit + " must be positive");
    }
  }
}
