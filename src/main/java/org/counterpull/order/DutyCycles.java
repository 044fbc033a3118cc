package org.counterpull.order;

/** Duty cycles of the shop's machines. */
@FunctionalInterface
public interface DutyCycles {
  /**
   * Share of a 10 min period that the arc may burn, %, above 0 to 100.
   *
   * @param machine name of the machine
   * @param currentA welding current
   */
  double percentAt(String machine, double currentA);
}
