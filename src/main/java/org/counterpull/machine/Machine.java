package org.counterpull.machine;

import java.util.List;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.power.Conversion;
import org.counterpull.power.LoadLine;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.power.SupplyGate;
import org.counterpull.quantity.Require;

/**
 * A power source with what is at hand for it.
 *
 * @param name as the shop calls it
 * @param processes what it can do
 * @param smallestCurrentA smallest current, A
 * @param largestCurrentA largest current of its plate, A
 * @param duty points of its plate
 * @param supply the socket it hangs on
 * @param conversion efficiency and power factor
 * @param wiresMm wire diameters at hand, mm; empty: 0.8 and 1.0
 * @param electrodesMm covered electrodes at hand, mm; empty: 2.5, 3.2 and 4.0
 * @param gas shielding gas at hand
 */
public record Machine(
    String name,
    List<WeldingProcess> processes,
    double smallestCurrentA,
    double largestCurrentA,
    PlateDuty duty,
    Supply supply,
    Conversion conversion,
    List<Double> wiresMm,
    List<Double> electrodesMm,
    ShieldingGas gas) {
  private static final List<Double> USUAL_WIRES_MM = List.of(0.8, 1.0);
  private static final List<Double> USUAL_ELECTRODES_MM = List.of(2.5, 3.2, 4.0);

  public Machine {
    if (processes.isEmpty()) {
      throw new IllegalArgumentException("machine " + name + " has no process");
    }
    Require.positive("smallest current", smallestCurrentA, "A");
    Require.within("largest current", largestCurrentA, smallestCurrentA, 2000, "A");
    processes = List.copyOf(processes);
    wiresMm = wiresMm.isEmpty() ? USUAL_WIRES_MM : wiresMm.stream().sorted().toList();
    electrodesMm =
        electrodesMm.isEmpty() ? USUAL_ELECTRODES_MM : electrodesMm.stream().sorted().toList();
    wiresMm.forEach(wire -> Require.positive("wire", wire, "mm"));
    electrodesMm.forEach(electrode -> Require.positive("electrode", electrode, "mm"));
  }

  /** Largest current that plate and socket allow, A. */
  public double usableCurrentA(WeldingProcess process) {
    double bySupplyA = SupplyGate.largestCurrentA(loadLine(process), conversion, supply, duty);
    return Math.min(largestCurrentA, bySupplyA);
  }

  /** Load line of a process. */
  public static LoadLine loadLine(WeldingProcess process) {
    return switch (process) {
      case MMA -> LoadLine.MMA;
      case TIG -> LoadLine.TIG;
      case MAG, MIG, FCAW, FCAW_S -> LoadLine.MAG;
    };
  }
}
