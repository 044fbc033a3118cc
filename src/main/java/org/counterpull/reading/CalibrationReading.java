package org.counterpull.reading;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Calibration;

/** Reads what a shop measured; each calibration is listed with the assumptions of a plan. */
final class CalibrationReading {
  private static final double LEAST_FACTOR = 0.05;
  private static final double MOST_FACTOR = 20;
  private static final double WIDEST = 10;

  private CalibrationReading() {}

  static Optional<Calibration> read(String name, Fields fields) {
    Map<Effect, FactorBand> factors = new EnumMap<>(Effect.class);
    for (Effect effect : Effect.values()) {
      factor(fields, effect).ifPresent(band -> factors.put(effect, band));
    }
    Optional<WeldingProcess> process =
        fields.has("process") ? fields.get("process").flatMap(Words::process) : Optional.empty();
    boolean anything = Arrays.stream(Effect.values()).anyMatch(e -> fields.has(e.word()));
    if (!anything) {
      return fields.problem("it has no factor", "angle: 1.15, angle within: 1.21");
    }
    if (factors.isEmpty() || fields.has("process") && process.isEmpty()) {
      return Optional.empty();
    }
    String from = fields.text("from").orElse("");
    fields.book().assume("calibration." + name, words(process, factors, from));
    return Optional.of(new Calibration(name, process, factors, from));
  }

  private static Optional<FactorBand> factor(Fields fields, Effect effect) {
    String within = effect.word() + " within";
    if (fields.has(effect.word()) != fields.has(within)) {
      String missing = fields.has(within) ? effect.word() : within;
      return fields.problem(
          missing + " is missing beside " + (fields.has(within) ? within : effect.word()),
          "both: the factor and how far it may be off");
    }
    Optional<Double> median =
        fields.get(effect.word()).flatMap(v -> v.number(LEAST_FACTOR, MOST_FACTOR, ""));
    Optional<Double> spread = fields.get(within).flatMap(v -> v.number(1, WIDEST, ""));
    return median.flatMap(m -> spread.map(s -> new FactorBand(m, s)));
  }

  private static String words(
      Optional<WeldingProcess> process, Map<Effect, FactorBand> factors, String from) {
    StringBuilder text = new StringBuilder("the shop's own factors for ");
    text.append(process.map(WeldingProcess::word).orElse("every process"));
    factors.forEach(
        (effect, band) ->
            text.append(", ")
                .append(effect.word())
                .append(" x ")
                .append(Printed.number(band.median(), 3))
                .append(" (")
                .append(Printed.number(band.low(), 3))
                .append(" to ")
                .append(Printed.number(band.high(), 3))
                .append(")"));
    return from.isEmpty() ? text.toString() : text + "; from: " + from;
  }
}
