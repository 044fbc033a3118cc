package org.counterpull.registry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.counterpull.power.Conversion;
import org.counterpull.power.DutyCycle;
import org.counterpull.power.DutyWait;
import org.counterpull.power.LeadDrop;
import org.counterpull.power.LoadLine;
import org.counterpull.power.LoadVoltage;
import org.counterpull.power.NecDutyMultiplier;
import org.counterpull.power.Supply;
import org.counterpull.power.SupplyCurrent;
import org.counterpull.power.WeldingCurrentLimit;

/** Published formulas of the package {@code power}. */
final class PowerFormulas {
  private PowerFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        dutyCycle(),
        loadVoltage(),
        dutyWait(),
        supplyCurrent(),
        effectiveCurrent(),
        currentLimit(),
        multiplier(),
        leadDrop());
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

  private static PublishedFormula dutyWait() {
    return PublishedFormula.of(
        DutyWait.FORMULA,
        List.of(
            Argument.quantity("arc-time", "s", "arc-on time"),
            Argument.quantity("duty", "%", "duty cycle at the welding current")),
        a -> DutyWait.FORMULA.result(DutyWait.seconds(a.value("arc-time"), a.value("duty"))));
  }

  private static List<Argument> drawn(List<Argument> first) {
    List<Argument> arguments = new ArrayList<>(first);
    arguments.add(Argument.quantity("supply-voltage", "V", "of the socket"));
    arguments.add(Argument.quantity("efficiency", "1", "arc power over power drawn"));
    arguments.add(Argument.quantity("power-factor", "1", "of the machine"));
    arguments.add(Argument.choice("phases", "of the socket", List.of("1", "3")).orElse("1"));
    return arguments;
  }

  private static Conversion conversion(Arguments a) {
    return new Conversion(a.value("efficiency"), a.value("power-factor"));
  }

  private static Supply supply(Arguments a) {
    return new Supply(a.value("supply-voltage"), 16, Integer.parseInt(a.text("phases")));
  }

  private static PublishedFormula supplyCurrent() {
    return PublishedFormula.of(
        SupplyCurrent.FORMULA,
        drawn(
            List.of(
                Argument.quantity("voltage", "V", "load voltage"),
                Argument.quantity("current", "A", "welding current"))),
        a -> SupplyCurrent.of(a.value("voltage"), a.value("current"), conversion(a), supply(a)));
  }

  private static PublishedFormula effectiveCurrent() {
    return PublishedFormula.of(
        SupplyCurrent.EFFECTIVE,
        List.of(
            Argument.quantity("supply-current", "A", "while the arc burns"),
            Argument.quantity("idle-current", "A", "while it doesn't").orElse("0"),
            Argument.quantity("duty", "%", "duty cycle")),
        a ->
            SupplyCurrent.EFFECTIVE.result(
                SupplyCurrent.effectiveA(
                    a.value("supply-current"), a.value("idle-current"), a.value("duty"))));
  }

  private static PublishedFormula currentLimit() {
    return PublishedFormula.of(
        WeldingCurrentLimit.FORMULA,
        drawn(
            List.of(
                Argument.choice("process", "welding process", List.of("mma", "mag", "tig")),
                Argument.quantity("supply-current", "A", "that the circuit carries"))),
        a ->
            WeldingCurrentLimit.of(
                LoadLine.valueOf(a.text("process").toUpperCase(Locale.ROOT)),
                conversion(a),
                supply(a),
                a.value("supply-current")));
  }

  private static PublishedFormula multiplier() {
    return PublishedFormula.of(
        NecDutyMultiplier.FORMULA,
        List.of(Argument.quantity("duty", "%", "duty cycle")),
        a -> NecDutyMultiplier.of(a.value("duty")));
  }

  private static PublishedFormula leadDrop() {
    return PublishedFormula.of(
        LeadDrop.FORMULA,
        List.of(
            Argument.quantity("current", "A", "in the lead"),
            Argument.quantity("length", "mm", "of conductor, there and back"),
            Argument.quantity("section", "mm2", "of copper")),
        a -> LeadDrop.of(a.value("current"), a.value("length") / 1000, a.value("section")));
  }
}
