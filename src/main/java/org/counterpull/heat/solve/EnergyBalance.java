package org.counterpull.heat.solve;

/**
 * Where the heat went since the start of a simulation.
 *
 * @param askedJ net power times time of all arcs
 * @param inJ what was put into the cells
 * @param storedJ gain of the metal
 * @param toAirJ lost by convection and radiation
 * @param toBodiesJ lost to tables, clamps and heat sinks
 */
public record EnergyBalance(
    double askedJ, double inJ, double storedJ, double toAirJ, double toBodiesJ) {

  public double lostJ() {
    return toAirJ + toBodiesJ;
  }

  /** What is missing, as a share of the largest term; of 1 J where nothing larger moved. */
  public double imbalance() {
    double largest = Math.max(Math.abs(inJ), Math.max(Math.abs(storedJ), Math.abs(lostJ())));
    return Math.abs(inJ - storedJ - lostJ()) / Math.max(1, largest);
  }
}
