package org.counterpull.registry;

import java.util.List;
import java.util.Locale;
import org.counterpull.power.DutyCycle;
import org.counterpull.power.LoadLine;
import org.counterpull.power.LoadVoltage;

/** Published formulas of the package {@code power}. */
final class PowerFormulas {
  private PowerFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(dutyCycle(), loadVoltage());
  }

  private static PublishedFormula dutyCycle() {
    return PublishedFormula.of(
        DutyCycle.FORMULA,
        List.of(
            Argument.quantity("rated-current", "A", "current that the duty is rated at"),
            Argument.quantity("rated-duty", "%", "rated duty cycle of a 10 min period"),
            Argument.quantity("current", "A", "current that the duty is wanted at")),
        a -> DutyCycle.of(a.value("rated-current"), a.value("rated-duty"), a.value("current")));
  }

  private static PublishedFormula loadVoltage() {
    return PublishedFormula.of(
        LoadVoltage.FORMULA,
        List.of(
            Argument.choice("process", "welding process", List.of("mma", "mag", "tig")),
            Argument.quantity("current", "A", "welding current")),
        a ->
            LoadVoltage.of(
                LoadLine.valueOf(a.text("process").toUpperCase(Locale.ROOT)), a.value("current")));
  }
}
