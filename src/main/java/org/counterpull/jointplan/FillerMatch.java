package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.filler.FillerClass;
import org.counterpull.filler.Joined;
import org.counterpull.machine.FillerAtHand;
import org.counterpull.machine.Machine;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.quantity.Printed;

/** Holds a filler against steel, process, gas, position and number of passes. */
record FillerMatch(
    Machine machine, WorkingPoint point, SteelAtJoint steel, FillerChoice.Work work) {
  /** A weld metal this much weaker than the steel is said to undermatch. */
  private static final double AS_STRONG = 0.95;

  private static final double THICK_MM = 20;

  /** What doesn't match. */
  List<String> notes(
      Optional<FillerAtHand> named, Optional<FillerClass> chosen, Optional<FillerClass> usual) {
    List<String> notes = new ArrayList<>();
    notes.addAll(lyingIdle());
    if (named.isPresent() && !named.get().designation().isEmpty() && chosen.isEmpty()) {
      notes.add(
          "filler "
              + named.get().designation()
              + " is no class that is known here: hold its packet against steel and process"
              + usual.map(u -> "; usual is " + u.name()).orElse(""));
    }
    chosen.ifPresent(
        c -> {
          notes.addAll(ofSteel(c, usual));
          notes.addAll(ofWork(c));
          notes.addAll(ofGas(c));
        });
    return notes;
  }

  /** Fillers that lie at the machine but are none of the process. */
  private List<String> lyingIdle() {
    if (!machine.fillersFor(point.process()).isEmpty()) {
      return List.of();
    }
    return machine.fillers().stream()
        .filter(f -> f.form() == FillerAtHand.Form.of(point.process()))
        .filter(f -> machine.processes().stream().noneMatch(f::serves))
        .map(
            f ->
                f.designation()
                    + " at "
                    + machine.name()
                    + " is not made for "
                    + point.process().word()
                    + f.fillerClass()
                        .map(c -> ": it is a filler for " + words(c.processes()))
                        .orElse(""))
        .toList();
  }

  private static String words(List<WeldingProcess> processes) {
    return String.join(" or ", processes.stream().map(WeldingProcess::word).toList());
  }

  private List<String> ofSteel(FillerClass filler, Optional<FillerClass> usual) {
    Joined joined = steel.joined();
    if (!filler.suits().contains(joined)) {
      boolean soft =
          joined == Joined.QUENCHED_AND_TEMPERED && filler.suits().contains(Joined.CARBON);
      return List.of(
          soft
              ? filler.name()
                  + " is softer than "
                  + steel.designation()
                  + ": good against cracks, but size the weld for "
                  + Printed.quantity(filler.tensileMPa(), "MPa")
                  + usual.map(u -> "; as strong: " + u.name()).orElse("")
              : filler.name()
                  + " does not match "
                  + joined.words()
                  + usual.map(u -> ": take " + u.name()).orElse(""));
    }
    OptionalDouble strongest =
        steel.grades().stream()
            .map(g -> g.tensileMPa())
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .min();
    boolean weak =
        strongest.isPresent() && filler.tensileMPa() < AS_STRONG * strongest.getAsDouble();
    return weak && joined != Joined.ALUMINIUM
        ? List.of(
            filler.name()
                + " gives "
                + Printed.quantity(filler.tensileMPa(), "MPa")
                + ", less than the parts' "
                + Printed.quantity(strongest.getAsDouble(), "MPa")
                + ": size the weld for it, or take a stronger class")
        : List.of();
  }

  private List<String> ofWork(FillerClass filler) {
    List<String> notes = new ArrayList<>();
    boolean level =
        switch (work.position()) {
          case PA, PB -> true;
          case PC, PD, PE, PF, PG -> false;
        };
    if (filler.flatOnly() && !level) {
      notes.add(filler.name() + " runs flat and horizontal only, not in " + work.position());
    }
    boolean basic = filler.processes().contains(WeldingProcess.MMA) && filler.isLowHydrogen();
    if (basic && work.position() == WeldingPosition.PG) {
      notes.add(filler.name() + " is not welded downwards: weld upwards, or take another class");
    }
    boolean hardens =
        steel.joined() == Joined.QUENCHED_AND_TEMPERED
            || work.thickerMm() > THICK_MM && steel.composition().isPresent();
    if (hardens && !filler.isLowHydrogen()) {
      notes.add(
          filler.name()
              + " brings much hydrogen: thick or hardening steel takes a low-hydrogen filler"
              + " (basic rods, solid wire)");
    }
    return notes;
  }

  private List<String> ofGas(FillerClass filler) {
    boolean bottled =
        switch (point.process()) {
          case MAG, MIG, FCAW -> true;
          case MMA, FCAW_S, TIG -> false;
        };
    if (!bottled) {
      return List.of();
    }
    ShieldingGas gas = machine.gas();
    boolean none = gas.equals(ShieldingGas.NONE);
    return switch (filler.gas()) {
      case NONE -> List.of();
      case MIXED, EITHER ->
          none
              ? List.of(filler.name() + " needs a gas, and none is named at " + machine.name())
              : gas.co2Percent() == 0
                  ? List.of(filler.name() + " wants some CO2 in its gas: Ar + 18 CO2, or CO2")
                  : List.of();
      case LOW ->
          gas.co2Percent() > 5
              ? List.of(
                  filler.name()
                      + " under "
                      + FillerChoice.words(gas)
                      + " takes up carbon and may rust: Ar + 2 CO2")
              : List.of();
      case INERT ->
          gas.co2Percent() > 0
              ? List.of(filler.name() + " is welded under pure argon, not under CO2")
              : List.of();
    };
  }

  /** What it mustn't be used for. */
  List<SteelAdvice.Forbidden> forbidden(Optional<FillerClass> chosen) {
    List<SteelAdvice.Forbidden> forbidden = new ArrayList<>();
    chosen
        .filter(c -> c.singlePass() && work.passes() > 1)
        .ifPresent(
            c ->
                forbidden.add(
                    new SteelAdvice.Forbidden(
                        c.name()
                            + " is made for a single pass, and this joint takes "
                            + work.passes()
                            + ": the second would be brittle",
                        "a wire for several passes, such as E71T-11 or E71T-8, or a smaller weld")));
    return forbidden;
  }
}
