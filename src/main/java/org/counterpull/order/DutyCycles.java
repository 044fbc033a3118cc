package org.counterpull.order;

import java.util.Map;
import java.util.TreeMap;
import org.counterpull.machine.Machine;
import org.counterpull.weldment.Weldment;

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

  /** By the plates of the shop's machines. */
  static DutyCycles of(Weldment weldment) {
    Map<String, Machine> machines = new TreeMap<>();
    weldment.machines().forEach(shop -> machines.put(shop.machine().name(), shop.machine()));
    return (machine, currentA) -> machines.get(machine).duty().percentAt(currentA);
  }
}
