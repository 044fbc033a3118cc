package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.filler.FillerClass;
import org.counterpull.filler.FillerClasses;
import org.counterpull.filler.Joined;
import org.counterpull.machine.FillerAtHand;
import org.counterpull.machine.Machine;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.procedure.Procedure;
import org.counterpull.quantity.Printed;

/**
 * The filler of a run: what the shop has at hand for the process, otherwise what steel and process
 * ask for; with everything that doesn't match said.
 *
 * @param filler as printed
 * @param fillerClass its class; empty where it is none that is known here
 * @param notes what doesn't match, in sentences
 * @param forbidden what it mustn't be used for here
 */
record FillerChoice(
    Filler filler,
    Optional<FillerClass> fillerClass,
    List<String> notes,
    List<SteelAdvice.Forbidden> forbidden) {
  private static final double SAME_DIAMETER_MM = 0.051;
  private static final double USUAL_FLOW_L_PER_MIN = 14;

  FillerChoice {
    notes = List.copyOf(notes);
    forbidden = List.copyOf(forbidden);
  }

  /** Diffusible hydrogen to reckon with, ml/100 g. */
  double hydrogenMlPer100g(WeldingProcess process) {
    return fillerClass
        .map(FillerClass::hydrogenMlPer100g)
        .map(ml -> process == WeldingProcess.TIG ? Math.min(ml, 3) : ml)
        .orElse(Hydrogen.mlPer100g(process));
  }

  /**
   * Chooses.
   *
   * @param machine with what is at hand
   * @param point how it is set
   * @param steel of both parts
   * @param row procedure row, where one covers the work
   * @param work what is welded with it
   */
  static FillerChoice of(
      Machine machine, WorkingPoint point, SteelAtJoint steel, Optional<Procedure> row, Work work) {
    Joined joined = steel.joined();
    Optional<FillerAtHand> named = best(machine, point, joined, work.passes());
    Optional<FillerClass> usual =
        FillerClasses.usual(
            point.process(),
            joined,
            steel.grades().stream().anyMatch(g -> g.designation().startsWith("316")));
    Optional<FillerClass> byRow =
        row.flatMap(r -> FillerClasses.find(r.electrode().classification()))
            .filter(c -> c.suits().contains(joined));
    Optional<FillerClass> chosen =
        named.isPresent() && !named.get().designation().isEmpty()
            ? named.get().fillerClass()
            : byRow.or(() -> usual);
    Filler filler =
        new Filler(
            designation(named, row, chosen, byRow),
            point.diameterMm(),
            gas(machine, point.process(), row),
            chosen
                .map(c -> c.polarity(point.process(), joined))
                .orElseGet(() -> usualPolarity(point.process())),
            chosen.map(FillerClass::storage).orElse("dry and covered, as its packet says"));
    FillerMatch match = new FillerMatch(machine, point, steel, work);
    return new FillerChoice(
        filler, chosen, match.notes(named, chosen, usual), match.forbidden(chosen));
  }

  /**
   * What a filler is used for.
   *
   * @param passes of the run
   * @param position that it is welded in
   * @param thickerMm the thicker part
   */
  record Work(int passes, WeldingPosition position, double thickerMm) {}

  /** The best of what lies at the machine in the diameter that it is set for. */
  private static Optional<FillerAtHand> best(
      Machine machine, WorkingPoint point, Joined joined, int passes) {
    Comparator<FillerAtHand> byMatch =
        Comparator.comparing(
                (FillerAtHand f) ->
                    !f.fillerClass().map(c -> c.suits().contains(joined)).orElse(false))
            .thenComparing(
                f -> passes > 1 && f.fillerClass().map(c -> c.singlePass()).orElse(false));
    return machine.fillersFor(point.process()).stream()
        .filter(f -> Math.abs(f.diameterMm() - point.diameterMm()) <= SAME_DIAMETER_MM)
        .min(byMatch);
  }

  private static String designation(
      Optional<FillerAtHand> named,
      Optional<Procedure> row,
      Optional<FillerClass> chosen,
      Optional<FillerClass> byRow) {
    String said = named.map(FillerAtHand::designation).orElse("");
    if (!said.isEmpty()) {
      return chosen
          .map(FillerClass::name)
          .filter(name -> !said.toUpperCase(java.util.Locale.ROOT).contains(name))
          .map(name -> said + " (" + name + ")")
          .orElse(said);
    }
    if (byRow.isPresent()) {
      return row.orElseThrow().electrode().classification();
    }
    return chosen.map(FillerClass::name).orElse("no filler known here joins this");
  }

  private static String usualPolarity(WeldingProcess process) {
    return switch (process) {
      case FCAW_S, TIG -> "DC-";
      case MMA, MAG, MIG, FCAW -> "DC+";
    };
  }

  private static String gas(Machine machine, WeldingProcess process, Optional<Procedure> row) {
    return switch (process) {
      case MMA, FCAW_S -> "none";
      case MAG, MIG, FCAW, TIG ->
          words(machine.gas())
              + ", "
              + Printed.number(
                  row.flatMap(Procedure::shielding)
                      .map(s -> s.flowLPerMin().middle())
                      .orElse(USUAL_FLOW_L_PER_MIN),
                  2)
              + " l/min";
    };
  }

  /** A gas in words. */
  static String words(ShieldingGas gas) {
    if (gas.co2Percent() >= 100) {
      return "CO2";
    }
    if (gas.argonPercent() <= 0) {
      return "no gas at the machine";
    }
    List<String> parts = new ArrayList<>(List.of("Ar"));
    if (gas.co2Percent() > 0) {
      parts.add(Printed.number(gas.co2Percent(), 3) + " % CO2");
    }
    double rest = 100 - gas.argonPercent() - gas.co2Percent();
    if (rest > 0.5) {
      parts.add(Printed.number(rest, 3) + " % other");
    }
    return String.join(" + ", parts);
  }
}
