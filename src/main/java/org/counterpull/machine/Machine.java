package org.counterpull.machine;

import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.power.Conversion;
import org.counterpull.power.LoadLine;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.power.SupplyGate;
import org.counterpull.power.WeldingCurrentLimit;
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
 * @param wiresMm wire diameters at hand, mm; empty: the usual ones of each process
 * @param electrodesMm covered electrodes at hand, mm; empty: 2.5, 3.2 and 4.0
 * @param gas shielding gas at hand
 * @param fillers wires, electrodes and rods at hand, with their designations where they are said
 * @param lead extension lead, where one is used
 * @param panel what its front shows
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
    ShieldingGas gas,
    List<FillerAtHand> fillers,
    Optional<ExtensionLead> lead,
    Panel panel) {
  private static final List<Double> USUAL_WIRES_MM = List.of(0.8, 1.0);
  private static final List<Double> USUAL_ELECTRODES_MM = List.of(2.5, 3.2, 4.0);
  private static final List<Double> USUAL_CORED_MM = List.of(1.2);
  private static final List<Double> USUAL_SELF_SHIELDED_MM = List.of(0.9);
  private static final List<Double> USUAL_RODS_MM = List.of(1.6, 2.4);

  public Machine {
    if (processes.isEmpty()) {
      throw new IllegalArgumentException("machine " + name + " has no process");
    }
    Require.positive("smallest current", smallestCurrentA, "A");
    Require.within("largest current", largestCurrentA, smallestCurrentA, 2000, "A");
    processes = List.copyOf(processes);
    wiresMm = wiresMm.stream().sorted().toList();
    electrodesMm =
        electrodesMm.isEmpty() ? USUAL_ELECTRODES_MM : electrodesMm.stream().sorted().toList();
    wiresMm.forEach(wire -> Require.positive("wire", wire, "mm"));
    electrodesMm.forEach(electrode -> Require.positive("electrode", electrode, "mm"));
    fillers = List.copyOf(fillers);
  }

  /** A machine straight on its socket, with displays, whose fillers are not named. */
  public Machine(
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
    this(
        name,
        processes,
        smallestCurrentA,
        largestCurrentA,
        duty,
        supply,
        conversion,
        wiresMm,
        electrodesMm,
        gas,
        List.of(),
        Optional.empty(),
        Panel.PLAIN);
  }

  /** Largest current that plate, socket and lead allow, A. */
  public double usableCurrentA(WeldingProcess process) {
    double bySupplyA = SupplyGate.largestCurrentA(loadLine(process), conversion, fed(), duty);
    double byLeadA =
        lead.map(
                l ->
                    WeldingCurrentLimit.amperes(
                        loadLine(process), conversion, fed(), l.largestSupplyA(supply)))
            .orElse(Double.POSITIVE_INFINITY);
    return Math.min(largestCurrentA, Math.min(bySupplyA, byLeadA));
  }

  /** The supply as it arrives at the machine: behind the lead, at the breaker's current. */
  public Supply fed() {
    return lead.map(l -> l.behind(supply, supply.breakerA())).orElse(supply);
  }

  /** Fillers at hand that a process can melt. */
  public List<FillerAtHand> fillersFor(WeldingProcess process) {
    return fillers.stream().filter(f -> f.serves(process)).toList();
  }

  /** Diameters at hand for a process, rising; the usual ones where none is named for it, mm. */
  public List<Double> diametersMm(WeldingProcess process) {
    List<Double> named =
        fillersFor(process).stream().map(FillerAtHand::diameterMm).distinct().sorted().toList();
    if (!named.isEmpty()) {
      return named;
    }
    return switch (process) {
      case MMA -> electrodesMm;
      case TIG -> USUAL_RODS_MM;
      case MAG, MIG, FCAW, FCAW_S -> wiresMm.isEmpty() ? usualWiresMm(process) : wiresMm;
    };
  }

  /** Wires that a process usually has at hand, mm; none for processes without a wire. */
  public static List<Double> usualWiresMm(WeldingProcess process) {
    return switch (process) {
      case MAG, MIG -> USUAL_WIRES_MM;
      case FCAW -> USUAL_CORED_MM;
      case FCAW_S -> USUAL_SELF_SHIELDED_MM;
      case MMA, TIG -> List.of();
    };
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
