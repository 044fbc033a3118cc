package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.fillet.LegEnergy;
import org.counterpull.machine.Machine;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.position.WeldingPosition;
import org.counterpull.power.LoadVoltage;
import org.counterpull.quantity.Require;

/**
 * Heat of a fillet of a leg at a current: arc energy by the leg ({@link LegEnergy}), voltage by the
 * load line ({@link LoadVoltage}), travel from both; more passes where one would have to creep.
 *
 * @param passes equal passes
 * @param notes what must be known, in sentences
 */
public record LegHeat(List<WeldPass> passes, List<String> notes) {
  private static final double CREEP = 0.6;

  public LegHeat {
    passes = List.copyOf(passes);
    notes = List.copyOf(notes);
  }

  /**
   * The passes.
   *
   * @param process welding process
   * @param legMm leg
   * @param currentA welding current
   */
  public static LegHeat of(WeldingProcess process, double legMm, double currentA) {
    Require.positive("leg", legMm, "mm");
    double volts = LoadVoltage.volts(Machine.loadLine(process), currentA);
    double arc = ProcessLimits.energyPerLeg(process) * legMm * legMm;
    double travel = volts * currentA / 1000 / arc;
    double slowest = ProcessLimits.slowestMmPerS(process, WeldingPosition.PB);
    double fastest = ProcessLimits.fastestMmPerS(process);
    int count = (int) Math.max(1, Math.ceil(CREEP * slowest / travel));
    double speed = Math.min(fastest, travel * count);
    double metal = LegEnergy.BEAD_MM2_PER_KJ_PER_MM * LegEnergy.kJPerMm(legMm);
    double net = Math.max(arc / count, volts * currentA / 1000 / speed) * 1000;
    List<WeldPass> passes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      passes.add(new WeldPass(net * process.efficiency(), speed, metal / count));
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        String.format(
            Locale.ROOT,
            "%.0f A at %.1f V, %.1f mm/s, %d %s of %.0f J/mm net",
            currentA,
            volts,
            speed,
            count,
            count == 1 ? "pass" : "passes",
            net * process.efficiency()));
    if (travel > fastest) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%.0f A lays more than a leg of %.1f mm: no hand is faster than %.1f mm/s",
              currentA,
              legMm,
              fastest));
    }
    return new LegHeat(passes, notes);
  }
}
