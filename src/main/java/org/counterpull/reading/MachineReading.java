package org.counterpull.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.machine.Machine;
import org.counterpull.power.Conversion;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.ShopMachine;

/** Reads machines. */
final class MachineReading {
  private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\.\\.+|\\bto\\b)\\s*(.+)");
  private static final Pattern POINT = Pattern.compile("(.+?)\\s*\\bat\\s+(.+)");
  private static final Pattern SUPPLY =
      Pattern.compile("([\\d.]+\\s*k?V)\\s*,?\\s*([\\d.]+\\s*A)(?:\\s*,?\\s*(.+))?");
  private static final Pattern FILLER =
      Pattern.compile("((?:\\d+\\s+)?[\\d./-]+\\s*(?:mm|in|\")?)(?:\\s+(.+))?");
  private static final double LEAST_CURRENT_A = 1;
  private static final double GREATEST_CURRENT_A = 2000;

  private MachineReading() {}

  static Optional<ShopMachine> read(String name, Fields fields) {
    Optional<List<WeldingProcess>> processes =
        fields.get("process").flatMap(v -> v.all(MachineReading::process));
    Optional<double[]> range = fields.get("current").flatMap(MachineReading::range);
    Optional<PlateDuty> duty = fields.get("duty").flatMap(v -> duty(v, range));
    Optional<Supply> supply = fields.get("supply").flatMap(MachineReading::supply);
    Optional<Conversion> conversion = conversion(fields);
    Optional<List<Double>> wires = fillers(fields, "wire", 0.5, 6);
    Optional<List<Double>> electrodes = fillers(fields, "electrodes", 1, 8);
    Optional<List<Double>> rods = fillers(fields, "rods", 0.5, 8);
    Optional<ShieldingGas> gas = gas(fields, processes);
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
            && gas.isPresent();
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
                gas.get()),
            place));
  }

  private static Optional<WeldingProcess> process(Value value) {
    Optional<String> text = value.text();
    Optional<WeldingProcess> process = text.flatMap(WeldingProcess::parse);
    return text.isPresent() && process.isEmpty()
        ? value.problem(
            Problems.quote(text.get()) + " is no welding process known here",
            Problems.didYouMean(text.get(), WeldingProcess.allWords()))
        : process;
  }

  private static Optional<double[]> range(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher range = RANGE.matcher(text.get());
    if (!range.matches()) {
      return value.problem(
          Problems.quote(text.get()) + " is no range of current", "30..200 A: smallest..largest");
    }
    Optional<Double> low = value.parsed(range.group(1), QuantityParser::parseCurrentA);
    Optional<Double> high = value.parsed(range.group(2), QuantityParser::parseCurrentA);
    if (low.isEmpty() || high.isEmpty()) {
      return Optional.empty();
    }
    boolean sane =
        low.get() >= LEAST_CURRENT_A && high.get() <= GREATEST_CURRENT_A && low.get() <= high.get();
    return sane
        ? Optional.of(new double[] {low.get(), high.get()})
        : value.problem(
            Problems.quote(text.get()) + " does not run from a smaller to a larger current",
            "30..200 A, within 1 to 2000 A");
  }

  private static Optional<PlateDuty> duty(Value value, Optional<double[]> range) {
    Optional<List<DutyPoint>> points = value.all(v -> point(v, range));
    if (points.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PlateDuty(points.get()));
    } catch (IllegalArgumentException e) {
      return value.problem(
          "the duty cycle must fall as the current rises, one point for each current",
          "[60% at 120 A, 20% at 200 A]");
    }
  }

  private static Optional<DutyPoint> point(Value value, Optional<double[]> range) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher point = POINT.matcher(text.get());
    if (!point.matches()) {
      return value.problem(Problems.quote(text.get()) + " is no duty cycle", "20% at 200 A");
    }
    Optional<Double> percent = value.parsed(point.group(1), QuantityParser::parsePercent);
    Optional<Double> current = value.parsed(point.group(2), QuantityParser::parseCurrentA);
    if (percent.isEmpty() || current.isEmpty()) {
      return Optional.empty();
    }
    if (!(percent.get() >= 1 && percent.get() <= 100)) {
      return value.problem(
          "a duty cycle of " + Value.shortest(percent.get()) + " % does not exist", "1 to 100 %");
    }
    if (range.isPresent() && (current.get() > range.get()[1] || current.get() < LEAST_CURRENT_A)) {
      return value.problem(
          "the duty cycle is stated at "
              + Value.shortest(current.get())
              + " A, which the machine does not reach: its largest current is "
              + Value.shortest(range.get()[1])
              + " A",
          "the figures of the rating plate");
    }
    return Optional.of(new DutyPoint(current.get(), percent.get()));
  }

  private static Optional<Supply> supply(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Matcher supply = SUPPLY.matcher(text.get());
    String phases = supply.matches() && supply.group(3) != null ? supply.group(3) : "single-phase";
    boolean three = phases.matches("(?i)(three|3)[ -]?phases?");
    boolean single = phases.matches("(?i)(single|one|1)[ -]?phase");
    if (!supply.matches() || !three && !single) {
      return value.problem(
          Problems.quote(text.get()) + " is no supply", "230 V 16 A, or 400 V 16 A three-phase");
    }
    Optional<Double> volts = value.parsed(supply.group(1), QuantityParser::parseVoltageV);
    Optional<Double> amps = value.parsed(supply.group(2), QuantityParser::parseCurrentA);
    if (volts.isEmpty() || amps.isEmpty()) {
      return Optional.empty();
    }
    boolean sane =
        volts.get() >= 48 && volts.get() <= 1000 && amps.get() >= 1 && amps.get() <= 1000;
    return sane
        ? Optional.of(new Supply(volts.get(), amps.get(), three ? 3 : 1))
        : value.problem(
            Problems.quote(text.get()) + " is outside 48 to 1000 V and 1 to 1000 A", "230 V 16 A");
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
      return fields.get("gas").flatMap(GasReading::read);
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
