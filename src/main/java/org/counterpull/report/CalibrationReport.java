package org.counterpull.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.calibration.Reading;
import org.counterpull.coupon.Calibrated;
import org.counterpull.coupon.RunPull;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Calibration;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Weldment;

/** Readings told: what each made of its factor, what that narrows, and the shop's file. */
public final class CalibrationReport {
  /** First line of a file that this program wrote and may write again. */
  public static final String HEAD = "# Calibration of this shop, written by counterpull calibrate.";

  private final Weldment weldment;
  private final Calibrated calibrated;
  private final List<RunPull> pulls;

  /**
   * A report.
   *
   * @param pulls all runs, the least sure first
   */
  public CalibrationReport(Weldment weldment, Calibrated calibrated, List<RunPull> pulls) {
    this.weldment = weldment;
    this.calibrated = calibrated;
    this.pulls = List.copyOf(pulls);
  }

  /** The shop's file. */
  public String shopFile() {
    Calibration made = calibrated.calibration(weldment, from());
    StringBuilder text = new StringBuilder(HEAD);
    text.append("\n# Include it: `include: FILE` at the top of a weldment file.\n");
    text.append(
        "# A factor is the middle; 90 % lies between it divided by `within` and multiplied");
    text.append(" with it.\ncalibration:\n");
    text.append("  ").append(made.name()).append(":\n");
    text.append("    process: ").append(calibrated.coupon().run().process().word()).append('\n');
    made.factors()
        .forEach(
            (effect, band) ->
                text.append(
                    String.format(
                        Locale.ROOT,
                        "    %1$s: %2$s%n    %1$s within: %3$s%n",
                        effect.word(),
                        Printed.number(band.median(), 5),
                        Printed.number(band.within(), 5))));
    text.append("    from: ").append(from()).append('\n');
    return text.toString().replace("\r\n", "\n");
  }

  private String from() {
    return (calibrated.coupon().butt() ? "butt" : "tee")
        + " of "
        + Printed.number(calibrated.coupon().pull().plateMm(), 4)
        + " mm at "
        + Printed.number(calibrated.coupon().run().netHeatJPerMm(), 3)
        + " J/mm, "
        + calibrated.readings().stream()
            .map(r -> r.effect().word() + " x " + Printed.number(r.ratio(), 3))
            .collect(Collectors.joining(" and "));
  }

  /** What the terminal says. */
  public String summary() {
    StringBuilder text = new StringBuilder();
    text.append(weldment.name()).append(": readings on the test piece for run ");
    text.append(calibrated.coupon().run().name()).append(" (");
    text.append(calibrated.coupon().run().process().word()).append(")\n\n");
    Map<Effect, FactorBand> now = new EnumMap<>(calibrated.before());
    for (Reading reading : calibrated.readings()) {
      FactorBand before = now.get(reading.effect());
      FactorBand after = before.after(reading);
      now.put(reading.effect(), after);
      text.append(
          String.format(
              Locale.ROOT,
              "%s: measured %s times what was expected%n  factor %s%n      -> %s%n",
              reading.effect().meaning(),
              Printed.number(reading.ratio(), 3),
              CouponReport.band(before),
              CouponReport.band(after)));
    }
    text.append("\nOne run of this process to come, 90 %:\n");
    for (Effect effect : Effect.values()) {
      if (calibrated.told(effect)) {
        text.append("  ").append(effect.meaning()).append(": ");
        text.append(CouponReport.band(calibrated.before().get(effect).ofOneRun()));
        text.append("\n      -> ");
        text.append(CouponReport.band(calibrated.after().get(effect).ofOneRun())).append('\n');
      }
    }
    text.append(
        "\nWhat the runs at a check's parts leave open, by the closed forms of each run:\n");
    weldment.checks().forEach(check -> narrowed(text, check));
    if (weldment.checks().isEmpty()) {
      text.append("  the file has no checks\n");
    }
    return text.toString().replace("\r\n", "\n");
  }

  private void narrowed(StringBuilder text, Check check) {
    List<RunPull> near = near(check);
    double before = open(near, calibrated.before());
    text.append("  ").append(check.name()).append(": ");
    if (near.stream().noneMatch(this::ofItsProcess)) {
      text.append("no run of this process at its parts: as before\n");
      return;
    }
    double after = open(near, calibrated.after());
    text.append(Math.round(100 * after / before)).append(" % of what it was");
    for (Effect effect : Effect.values()) {
      if (calibrated.told(effect)) {
        Map<Effect, FactorBand> alone = new EnumMap<>(calibrated.before());
        alone.put(effect, calibrated.after().get(effect));
        double less = 1 - open(near, alone) / before;
        text.append("; ").append(effect.word()).append(' ');
        text.append(signed(-less)).append(" %");
      }
    }
    text.append('\n');
  }

  private static String signed(double share) {
    long percent = Math.round(100 * share);
    return percent > 0 ? "+" + percent : Long.toString(percent);
  }

  private boolean ofItsProcess(RunPull pull) {
    return pull.run().process() == calibrated.coupon().run().process();
  }

  /** Ways of the runs times the standard deviation of their factor's logarithm, mm. */
  private double open(List<RunPull> near, Map<Effect, FactorBand> factors) {
    double sum = 0;
    for (RunPull pull : near) {
      for (Effect effect : Effect.values()) {
        FactorBand factor =
            ofItsProcess(pull)
                ? factors.get(effect)
                : weldment.factor(pull.run().process(), effect);
        sum += pull.movesMm().get(effect) * factor.median() * factor.ofOneRun().sigmaLog();
      }
    }
    return sum;
  }

  /** Runs of joints that touch a part of the check. */
  private List<RunPull> near(Check check) {
    Set<String> parts =
        check.subjects().stream().map(Check.Subject::part).collect(Collectors.toSet());
    return pulls.stream()
        .filter(
            p -> {
              Joint joint = weldment.joint(p.run().line().joint());
              return parts.contains(joint.first()) || parts.contains(joint.second());
            })
        .toList();
  }

  /** For machines. */
  public ObjectNode json() {
    ObjectNode node = new ObjectMapper().createObjectNode();
    node.put("weldment", weldment.name());
    node.put("run", calibrated.coupon().run().name());
    node.put("process", calibrated.coupon().run().process().word());
    ArrayNode factors = node.putArray("factors");
    for (Effect effect : Effect.values()) {
      ObjectNode factor = factors.addObject().put("effect", effect.word());
      band(factor.putObject("before"), calibrated.before().get(effect));
      band(factor.putObject("after"), calibrated.after().get(effect));
    }
    ArrayNode checks = node.putArray("checks");
    for (Check check : weldment.checks()) {
      ArrayNode runs = checks.addObject().put("name", check.name()).putArray("runs");
      near(check).forEach(p -> runs.add(p.run().name()));
    }
    return node;
  }

  private static void band(ObjectNode node, FactorBand band) {
    node.put("median", band.median()).put("low", band.low()).put("high", band.high());
  }
}
