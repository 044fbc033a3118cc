package org.counterpull.zone;

import java.util.List;
import org.counterpull.shrinkage.ShrinkageMaterial;

/**
 * What yielded lengthwise beside a run, and the force that it keeps.
 *
 * <p>At the moment when one cell is at its peak, the metal nearer to the run has been hotter and is
 * falling, the metal farther off is still to come. For a line of heat in plate the temperature of
 * another cell at that moment follows from both peaks alone: T' = T sqrt(e) exp(-(T / Tp')2 / 2),
 * because peak times distance is constant and so is their product with the width of the spread
 * (derived). With these temperatures the section, as a plane that nothing else holds, gives way by
 * the strain at which its forces balance, none of it above yield.
 *
 * @param forceN shrinkage force
 * @param atNMm where it acts across the run
 * @param atBMm where it acts out of the metal
 */
record LengthwiseYield(double forceN, double atNMm, double atBMm) {
  private static final int STATIONS = 32;
  private static final int BISECTIONS = 40;

  static LengthwiseYield of(
      List<PeakCell> cells,
      double lengthMm,
      double sectionMm2,
      double startC,
      double yieldStrain,
      ShrinkageMaterial material) {
    double yieldRiseK = yieldStrain / material.expansionPerK();
    double hottest =
        Math.max(
            2.0001 * yieldRiseK,
            cells.stream()
                .mapToDouble(c -> c.peakC() - startC)
                .filter(Double::isFinite)
                .max()
                .orElse(0));
    Section section = new Section(sectionMm2, lengthMm, yieldRiseK, hottest);
    cells.forEach(c -> section.add(c.peakC() - startC, c.volumeMm3()));
    double[] given = section.givenWayK();
    double sum = 0;
    double sumN = 0;
    double sumB = 0;
    for (PeakCell cell : cells) {
      double rise = Math.min(cell.peakC() - startC, hottest);
      double overK = rise - section.at(given, rise) - yieldRiseK;
      double part = clamped(overK, 0, yieldRiseK) * cell.volumeMm3();
      sum += part;
      sumN += part * cell.nMm();
      sumB += part * cell.bMm();
    }
    double force = material.elasticModulusMPa() * material.expansionPerK() * sum / lengthMm;
    return sum > 0
        ? new LengthwiseYield(force, sumN / sum, sumB / sum)
        : new LengthwiseYield(0, 0, 0);
  }

  private static double clamped(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }

  /** The section by classes of peak; all strains as the rise that would cause them freely, in K. */
  private static final class Section {
    private final double sectionMm2;
    private final double lengthMm;
    private final double yieldRiseK;
    private final double logLow;
    private final double logStep;
    private final double[] areaMm2 = new double[STATIONS];
    private final double[] riseArea = new double[STATIONS];

    /** Cells that never get half as warm as yield takes are cold to it. */
    Section(double sectionMm2, double lengthMm, double yieldRiseK, double hottestK) {
      this.sectionMm2 = sectionMm2;
      this.lengthMm = lengthMm;
      this.yieldRiseK = yieldRiseK;
      logLow = Math.log(yieldRiseK / 4);
      logStep = (Math.log(hottestK) - logLow) / (STATIONS - 1);
    }

    void add(double riseK, double volumeMm3) {
      if (riseK > Math.exp(logLow)) {
        int i = (int) clamped(Math.round(place(riseK)), 0, STATIONS - 1);
        areaMm2[i] += volumeMm3 / lengthMm;
        riseArea[i] +=
            Math.min(riseK, Math.exp(logLow + logStep * STATIONS)) * volumeMm3 / lengthMm;
      }
    }

    private double place(double riseK) {
      return (Math.log(riseK) - logLow) / logStep;
    }

    /** The strain at a peak, between the stations. */
    double at(double[] given, double riseK) {
      double place = clamped(place(Math.max(riseK, 1e-9)), 0, STATIONS - 1);
      int i = (int) Math.min(place, STATIONS - 2);
      return given[i] + (place - i) * (given[i + 1] - given[i]);
    }

    /** How far the section has given way when a cell of each station's peak is at it. */
    double[] givenWayK() {
      double[] given = new double[STATIONS];
      for (int i = 0; i < STATIONS && Double.isFinite(sectionMm2); i++) {
        given[i] = balancedK(riseK(i));
      }
      return given;
    }

    private double riseK(int station) {
      return areaMm2[station] > 0
          ? riseArea[station] / areaMm2[station]
          : Math.exp(logLow + station * logStep);
    }

    private double balancedK(double peakK) {
      double[] nowK = new double[STATIONS];
      double coldMm2 = sectionMm2;
      for (int j = 0; j < STATIONS; j++) {
        double ratio = peakK / riseK(j);
        nowK[j] = peakK * Math.exp(0.5 - ratio * ratio / 2);
        coldMm2 -= areaMm2[j];
      }
      double low = 0;
      double high = 2 * peakK;
      for (int k = 0; k < BISECTIONS; k++) {
        double middle = (low + high) / 2;
        double pull = Math.max(0, coldMm2) * Math.min(middle, yieldRiseK);
        for (int j = 0; j < STATIONS; j++) {
          pull += areaMm2[j] * clamped(middle - nowK[j], -yieldRiseK, yieldRiseK);
        }
        if (pull < 0) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return (low + high) / 2;
    }
  }
}
