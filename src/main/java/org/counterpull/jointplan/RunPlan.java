package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Lay;
import org.counterpull.contact.WeldLine;
import org.counterpull.feeding.TransferMode;
import org.counterpull.position.WeldingPosition;
import org.counterpull.quantity.Computed;

/**
 * One run, ready to be put in order.
 *
 * @param line where it runs; its name is the run's name
 * @param machine name of the machine that welds it
 * @param place where that machine stands
 * @param lay how the weldment lies while it is welded
 * @param position the position that it is welded in
 * @param process welding process
 * @param transfer transfer mode; empty for stick and TIG
 * @param procedure id of the procedure row that the settings start from
 * @param filler filler and gas
 * @param weldedMm length that gets weld metal: less than the line where stitched
 * @param passes in the order of welding
 * @param preheatC least temperature of the metal before the first pass
 * @param interpassMaxC highest temperature of the metal before a pass
 */
public record RunPlan(
    WeldLine line,
    String machine,
    String place,
    Lay lay,
    WeldingPosition position,
    WeldingProcess process,
    Optional<TransferMode> transfer,
    String procedure,
    Filler filler,
    double weldedMm,
    List<PassPlan> passes,
    Computed preheatC,
    double interpassMaxC) {

  public RunPlan {
    passes = List.copyOf(passes);
  }

  /** The same run welded from the other end of its line. */
  public RunPlan reversed() {
    return new RunPlan(
        line.reversed(),
        machine,
        place,
        lay,
        position,
        process,
        transfer,
        procedure,
        filler,
        weldedMm,
        passes,
        preheatC,
        interpassMaxC);
  }

  /** The same run with other beads. */
  public RunPlan withPasses(List<PassPlan> otherPasses) {
    return new RunPlan(
        line,
        machine,
        place,
        lay,
        position,
        process,
        transfer,
        procedure,
        filler,
        weldedMm,
        otherPasses,
        preheatC,
        interpassMaxC);
  }

  /** Name of the run. */
  public String name() {
    return line.run();
  }

  /** Arc-on time of all passes, s. */
  public double arcTimeS() {
    return passes.stream().mapToDouble(PassPlan::arcTimeS).sum();
  }

  /** Net heat of all passes per length, J/mm. */
  public double netHeatJPerMm() {
    return passes.stream().mapToDouble(p -> p.netHeat().value()).sum();
  }

  /** Net heat of all passes over the welded length, J. */
  public double netHeatJ() {
    return netHeatJPerMm() * weldedMm;
  }

  /** Weld metal in the joint, mm3. */
  public double weldMetalMm3() {
    return passes.stream().mapToDouble(p -> p.area().value()).sum() * weldedMm;
  }
}
