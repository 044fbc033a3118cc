package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Dimension;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.RunGiven.Heat;
import org.counterpull.weldment.RunGiven.SourceBox;

/** Reads the heat that a file fixes on a run: per length, as a power, or by the meters. */
final class RunHeatReading {
  private static final double LARGEST_BOX_MM = 100;
  private static final double LEAST_J_PER_MM = 1;
  private static final double MOST_J_PER_MM = 20_000;
  private static final double MOST_W = 100_000;
  private static final List<String> WAYS = List.of("net", "arc", "power", "volts");
  private static final String TRY =
      "net: 600 for heat in the metal, arc: 750 for volts times amperes over speed, power: 3000 for"
          + " watts in the metal, or volts: 24, amps: 160";

  private final Fields fields;

  private RunHeatReading(Fields fields) {
    this.fields = fields;
  }

  static Optional<Heat> heat(Fields fields) {
    return new RunHeatReading(fields).heat();
  }

  private Optional<Heat> heat() {
    Optional<Double> travel =
        fields
            .get("travel")
            .flatMap(v -> v.quantity(QuantityParser::parseSpeedMmPerS, 0.1, 200, "mm/s"));
    Optional<SourceBox> source = fields.get("source").flatMap(RunHeatReading::box);
    Optional<Double> efficiency = fields.get("efficiency").flatMap(v -> v.number(0.05, 1, ""));
    Optional<String> way = way();
    if (way.isEmpty()) {
      return Optional.empty();
    }
    boolean net = way.get().equals("net") || way.get().equals("power");
    if (net && fields.has("efficiency")) {
      return fields.problem(
          "efficiency",
          "efficiency is for the energy of the arc; " + way.get() + " is what the metal gets",
          "leave efficiency out");
    }
    Optional<Double> given = jPerMm(way.get(), travel);
    if (given.isEmpty() || travel.isEmpty()) {
      return Optional.empty();
    }
    double jPerMm = given.get() * efficiency.orElse(1.0);
    if (!(jPerMm >= LEAST_J_PER_MM && jPerMm <= MOST_J_PER_MM)) {
      return fields.problem(
          Value.shortest(jPerMm) + " J/mm is outside 1 to 20000 J/mm", "another power or speed");
    }
    Heat.Kind kind = net || efficiency.isPresent() ? Heat.Kind.NET : Heat.Kind.ARC;
    return Optional.of(new Heat(jPerMm, kind, travel.get(), source));
  }

  /** By which key the heat is given: one of them, and volts only with amps. */
  private Optional<String> way() {
    List<String> given = WAYS.stream().filter(fields::has).toList();
    if (given.size() > 1) {
      return fields.problem(
          given.get(0) + " and " + given.get(1) + " are two different heats", TRY);
    }
    if (fields.has("amps") && !given.isEmpty() && !given.get(0).equals("volts")) {
      return fields.problem(given.get(0) + " and amps are two different heats", TRY);
    }
    if (fields.has("amps") != fields.has("volts")) {
      String missing = fields.has("amps") ? "volts" : "amps";
      return fields.problem(
          missing + " is missing: both make the power of the arc", "volts: 24, amps: 160");
    }
    return given.isEmpty()
        ? fields.problem("net, arc, power or volts is missing", TRY)
        : Optional.of(given.get(0));
  }

  private Optional<Double> jPerMm(String way, Optional<Double> travel) {
    return switch (way) {
      case "power" -> over(quantity("power", Dimension.POWER, "W", MOST_W), travel);
      case "volts" -> {
        Optional<Double> amps = quantity("amps", Dimension.CURRENT, "A", 2000);
        Optional<Double> volts = quantity("volts", Dimension.VOLTAGE, "V", 100);
        yield over(volts.flatMap(v -> amps.map(a -> v * a)), travel);
      }
      default ->
          fields
              .get(way)
              .flatMap(
                  v ->
                      v.quantity(
                          t -> QuantityParser.parse(Dimension.HEAT_PER_LENGTH, t, "J/mm"),
                          LEAST_J_PER_MM,
                          MOST_J_PER_MM,
                          "J/mm"));
    };
  }

  private Optional<Double> quantity(String key, Dimension what, String unit, double most) {
    return fields
        .get(key)
        .flatMap(v -> v.quantity(t -> QuantityParser.parse(what, t, unit), 1, most, unit));
  }

  private static Optional<Double> over(Optional<Double> watts, Optional<Double> travel) {
    return watts.flatMap(w -> travel.map(t -> w / t));
  }

  private static Optional<SourceBox> box(Value value) {
    Optional<String> text = value.text();
    List<String> sizes =
        text.filter(t -> t.startsWith("box "))
            .map(t -> List.of(t.substring(4).split(" x ", -1)))
            .orElse(List.of());
    if (sizes.size() != 3) {
      return text.flatMap(
          t -> value.problem(Problems.quote(t) + " is no source of heat", "box 8 x 8 x 4"));
    }
    List<Double> mm = sizes.stream().flatMap(s -> value.length(s.strip()).stream()).toList();
    if (mm.size() == 3 && mm.stream().allMatch(side -> side > 0 && side <= LARGEST_BOX_MM)) {
      return Optional.of(new SourceBox(mm.get(0), mm.get(1), mm.get(2)));
    }
    return mm.size() < 3
        ? Optional.empty()
        : value.problem("a source is above 0 and at most 100 mm each way", "box 8 x 8 x 4");
  }
}
