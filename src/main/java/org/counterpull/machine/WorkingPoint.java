package org.counterpull.machine;

import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.TransferMode;
import org.counterpull.fillet.LegEnergy;

/**
 * How a machine is set for a task.
 *
 * @param process welding process
 * @param diameterMm wire, rod or electrode, mm
 * @param currentA welding current, A
 * @param voltageV conventional load voltage at that current, V
 * @param slowestMmPerS slowest sensible travel, mm/s
 * @param dutyPercent duty cycle at that current, %
 * @param transfer transfer mode of solid wire; spray for processes that have no short circuit
 */
public record WorkingPoint(
    WeldingProcess process,
    double diameterMm,
    double currentA,
    double voltageV,
    double slowestMmPerS,
    double dutyPercent,
    TransferMode transfer) {

  /** Largest arc energy (no efficiency), at the slowest travel, kJ/mm. */
  public double largestArcEnergyKJPerMm() {
    return arcEnergyKJPerMm(slowestMmPerS);
  }

  /** Arc energy (no efficiency) at a travel speed, kJ/mm. */
  public double arcEnergyKJPerMm(double travelMmPerS) {
    return voltageV * currentA / travelMmPerS / 1000;
  }

  /** Leg that one pass lays at the slowest travel, mm. */
  public double largestLegMm() {
    return Math.sqrt(largestArcEnergyKJPerMm() / ProcessLimits.energyPerLeg(process));
  }

  /** Section of the largest bead, at the slowest travel, mm2. */
  public double largestBeadMm2() {
    double perEnergy =
        LegEnergy.BEAD_MM2_PER_KJ_PER_MM
            * LegEnergy.WIRE_KJ_PER_MM3
            / ProcessLimits.energyPerLeg(process);
    double largest = process == WeldingProcess.TIG ? 10 : 40;
    return Math.min(largest, perEnergy * largestArcEnergyKJPerMm());
  }

  /** Travel for a leg in one pass, within what a hand guides, mm/s. */
  public double travelForLegMmPerS(double legMm) {
    return travelForEnergyMmPerS(ProcessLimits.energyPerLeg(process) * legMm * legMm);
  }

  /** Travel for an arc energy, within what a hand guides, mm/s. */
  public double travelForEnergyMmPerS(double arcEnergyKJPerMm) {
    double wanted = voltageV * currentA / 1000 / arcEnergyKJPerMm;
    return Math.max(slowestMmPerS, Math.min(ProcessLimits.fastestMmPerS(process), wanted));
  }
}
