package org.counterpull.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.machine.ExtensionLead;
import org.counterpull.machine.FillerAtHand;
import org.counterpull.machine.Machine;
import org.counterpull.machine.Panel;
import org.counterpull.machine.PlateText;
import org.counterpull.power.Conversion;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.weldment.ShopMachine;

/** Reads machines. */
final class MachineReading {
  private static final Pattern FILLER =
      Pattern.compile("((?:\\d+\\s+)?[\\d./-]+\\s*(?:mm|in|\")?)(?:\\s+(.+))?");

  private static final double LEAST_FILLER_MM = 0.5;
  private static final double MOST_FILLER_MM = 8;

  private MachineReading() {}

  static Optional<ShopMachine> read(String name, Fields fields) {
    Optional<List<WeldingProcess>> processes =
        fields.get("process").flatMap(v -> v.all(Words::process));
    Optional<double[]> range = fields.get("current").flatMap(RatingPlate::range);
    Optional<PlateDuty> duty = fields.get("duty").flatMap(v -> RatingPlate.duty(v, range));
    Optional<Supply> supply = fields.get("supply").flatMap(RatingPlate::supply);
    Optional<Conversion> conversion = conversion(fields);
    assumeFillers(fields, processes.orElse(List.of()));
    Optional<List<Double>> wires = fillers(fields, "wire", 0.5, 6);
    Optional<List<Double>> electrodes = fillers(fields, "electrodes", 1, 8);
    Optional<List<Double>> rods = fillers(fields, "rods", 0.5, 8);
    Optional<ShieldingGas> gas = gas(fields, processes);
    Optional<Optional<ExtensionLead>> lead =
        fields.has("lead")
            ? fields.get("lead").flatMap(v -> v.parsed(PlateText::lead)).map(Optional::of)
            : Optional.of(Optional.empty());
    Optional<Panel> panel = PanelReading.read(fields);
    String place = place(fields);
    boolean complete =
        processes.isPresent()
            && range.isPresent()
            && duty.isPresent()
            && supply.isPresent()
            && conversion.isPresent()
            && wires.isPresent()
            && electrodes.isPresent()
            && rods.isPresent()
            && gas.isPresent()
            && lead.isPresent()
            && panel.isPresent();
    if (!complete) {
      return Optional.empty();
    }
    return Optional.of(
        new ShopMachine(
            new Machine(
                name,
                processes.get(),
                range.get()[0],
                range.get()[1],
                duty.get(),
                supply.get(),
                conversion.get(),
                wires.get(),
                electrodes.get(),
                gas.get(),
                atHand(fields),
                lead.get(),
                panel.get()),
            place));
  }

  private static List<FillerAtHand> atHand(Fields fields) {
    List<FillerAtHand> all = new ArrayList<>();
    all.addAll(named(fields, "wire", FillerAtHand.Form.WIRE));
    all.addAll(named(fields, "electrodes", FillerAtHand.Form.ELECTRODE));
    all.addAll(named(fields, "rods", FillerAtHand.Form.ROD));
    return all;
  }

  private static Optional<Conversion> conversion(Fields fields) {
    boolean corrected = fields.truth("corrected", true);
    Conversion usual = corrected ? Conversion.CORRECTED : Conversion.PLAIN;
    Optional<Double> efficiency = share(fields, "efficiency", usual.efficiency());
    Optional<Double> factor = share(fields, "power factor", usual.powerFactor());
    return efficiency.flatMap(e -> factor.map(f -> new Conversion(e, f)));
  }

  private static Optional<Double> share(Fields fields, String key, double usual) {
    if (fields.has(key)) {
      return fields.get(key).flatMap(v -> v.number(0.2, 1, ""));
    }
    fields.book().assume(fields.path(key), Double.toString(usual));
    return Optional.of(usual);
  }

  /** Diameters of wires, electrodes or rods; empty list where none are named. */
  private static Optional<List<Double>> fillers(
      Fields fields, String key, double leastMm, double mostMm) {
    return fields.has(key)
        ? fields.get(key).flatMap(v -> v.all(item -> filler(item, leastMm, mostMm)))
        : Optional.of(List.of());
  }

  private static void assumeFillers(Fields fields, List<WeldingProcess> processes) {
    if (!fields.has("electrodes") && processes.contains(WeldingProcess.MMA)) {
      fields.book().assume(fields.path("electrodes"), "2.5, 3.2 and 4.0 mm are at hand");
    }
    List<String> wires =
        processes.stream()
            .filter(p -> !Machine.usualWiresMm(p).isEmpty())
            .map(MachineReading::usualWires)
            .distinct()
            .toList();
    if (!fields.has("rods") && processes.contains(WeldingProcess.TIG)) {
      fields.book().assume(fields.path("rods"), "1.6 and 2.4 mm are at hand");
    }
    if (!fields.has("wire") && !wires.isEmpty()) {
      fields.book().assume(fields.path("wire"), String.join(", ", wires));
    }
  }

  private static String usualWires(WeldingProcess process) {
    String diameters =
        String.join(
            " and ", Machine.usualWiresMm(process).stream().map(d -> d.toString()).toList());
    return switch (process) {
      case MAG, MIG -> diameters + " mm are at hand";
      case FCAW -> diameters + " mm cored wire is at hand";
      case FCAW_S -> diameters + " mm self-shielded wire is at hand";
      case MMA, TIG -> "";
    };
  }

  /** Diameters with what is written behind them; nothing where the key is left out. */
  private static List<FillerAtHand> named(Fields fields, String key, FillerAtHand.Form form) {
    if (!fields.has(key)) {
      return List.of();
    }
    return fields.get(key).flatMap(v -> v.all(item -> named(item, form))).orElse(List.of());
  }

  private static Optional<FillerAtHand> named(Value value, FillerAtHand.Form form) {
    Optional<Matcher> match = value.text().map(FILLER::matcher).filter(Matcher::matches);
    if (match.isEmpty()) {
      return Optional.empty();
    }
    String words = match.get().group(2) == null ? "" : match.get().group(2).strip();
    return value
        .withText(match.get().group(1))
        .size(LEAST_FILLER_MM, MOST_FILLER_MM)
        .map(diameterMm -> new FillerAtHand(form, diameterMm, words));
  }

  private static Optional<Double> filler(Value value, double leastMm, double mostMm) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher filler = FILLER.matcher(text.get());
    return filler.matches()
        ? value.withText(filler.group(1)).size(leastMm, mostMm)
        : value.problem(
            Problems.quote(text.get()) + " is no diameter with a designation", value.example());
  }

  private static Optional<ShieldingGas> gas(
      Fields fields, Optional<List<WeldingProcess>> processes) {
    if (fields.has("gas")) {
      return fields.get("gas").flatMap(v -> v.parsed(PlateText::gas));
    }
    List<WeldingProcess> known = new ArrayList<>(processes.orElse(List.of()));
    ShieldingGas gas = ShieldingGas.NONE;
    for (WeldingProcess process : known) {
      ShieldingGas usual =
          switch (process) {
            case MAG, FCAW -> ShieldingGas.ARGON_18_CO2;
            case MIG, TIG -> ShieldingGas.ARGON;
            case MMA, FCAW_S -> ShieldingGas.NONE;
          };
      gas = gas.equals(ShieldingGas.NONE) ? usual : gas;
    }
    if (!gas.equals(ShieldingGas.NONE)) {
      boolean mixed = gas.equals(ShieldingGas.ARGON_18_CO2);
      fields.book().assume(fields.path("gas"), mixed ? "Ar + 18 CO2" : "Ar");
    }
    return Optional.of(gas);
  }

  private static String place(Fields fields) {
    if (!fields.has("place")) {
      return ShopMachine.HERE;
    }
    return fields.text("place").orElse(ShopMachine.HERE);
  }
}
