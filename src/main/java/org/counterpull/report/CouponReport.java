package org.counterpull.report;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.coupon.Coupon;
import org.counterpull.coupon.Measure;
import org.counterpull.coupon.RunPull;
import org.counterpull.drawing.CouponDrawing;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.Weldment;

/** A test piece told: a sheet for the bench, a drawing, JSON. */
public final class CouponReport {
  private static final int SHOWN_RUNS = 5;

  private final Weldment weldment;
  private final Coupon coupon;
  private final List<RunPull> pulls;

  /**
   * A report.
   *
   * @param pulls all runs, the least sure first
   */
  public CouponReport(Weldment weldment, Coupon coupon, List<RunPull> pulls) {
    this.weldment = weldment;
    this.coupon = coupon;
    this.pulls = List.copyOf(pulls);
  }

  /** Texts by file name. */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("coupon.md", sheet());
    files.put("coupon.svg", CouponDrawing.of(coupon).toString());
    return files;
  }

  /** The sheet for the bench. */
  public String sheet() {
    StringBuilder text = new StringBuilder();
    text.append("# Test piece for ").append(weldment.name()).append("\n\n");
    why(text);
    text.append("\n## What to cut\n\n");
    cut().forEach(line -> text.append("- ").append(line).append('\n'));
    text.append("\n## How to weld it\n\n");
    weld().forEach(line -> text.append("- ").append(line).append('\n'));
    text.append("\n## What to measure, cold\n\n");
    measure().forEach(line -> text.append("- ").append(line).append('\n'));
    text.append("\nThen: `counterpull calibrate FILE --measured ");
    text.append("angle=").append(degrees(coupon.expected().get(Measure.ANGLE))).append("deg ");
    text.append("shrinkage=").append(mm(coupon.expected().get(Measure.SHRINKAGE))).append("mm ");
    text.append("--out shop.yaml` with your own readings in place of these, which are what is");
    text.append(" expected. Weld two or three pieces if you can: each reading narrows further.\n");
    return text.toString();
  }

  private void why(StringBuilder text) {
    RunPlan run = coupon.run();
    text.append("It stands for run ").append(run.name()).append(": ").append(run.process().word());
    text.append(" on ")
        .append(run.machine())
        .append(", wall ")
        .append(size(coupon.pull().plateMm()));
    text.append(", ").append(Printed.number(run.netHeatJPerMm(), 3)).append(" J/mm net.\n\n");
    text.append("What is not known yet, by the closed forms of each run (the stiffness of the");
    text.append(" whole is not in these shares):\n\n| factor on | share | 90 % of welds, now |\n");
    text.append("|---|---:|---|\n");
    for (Effect effect : Effect.values()) {
      FactorBand band = weldment.factor(run.process(), effect);
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %d %% | %s |%n",
              effect.meaning(),
              Math.round(100 * coupon.shares().get(effect)),
              band(band.ofOneRun())));
    }
    text.append("\nRuns that leave most open: ");
    text.append(
        String.join(
            ", ",
            pulls.stream()
                .limit(SHOWN_RUNS)
                .map(
                    p ->
                        p.run().name()
                            + " ("
                            + Printed.number(p.openMm(), 2)
                            + " mm, mostly "
                            + p.unsurest().meaning()
                            + ")")
                .toList()));
    text.append(".\n");
  }

  private List<String> cut() {
    String plate =
        coupon.butt()
            ? "2 plates "
                + size(coupon.lengthMm())
                + " x "
                + size(coupon.plateWidthMm() / 2)
                + " x "
                + size(coupon.pull().plateMm())
                + ", long edges prepared as in the job"
            : "1 plate "
                + size(coupon.lengthMm())
                + " x "
                + size(coupon.plateWidthMm())
                + " x "
                + size(coupon.pull().plateMm());
    List<String> lines = new ArrayList<>(List.of(plate));
    if (!coupon.butt()) {
      lines.add(
          "1 upright "
              + size(coupon.lengthMm())
              + " x "
              + size(coupon.uprightHeightMm())
              + " x "
              + size(coupon.pull().otherMm())
              + ", set on the middle of the plate along its length");
    }
    lines.add(
        "only if you want camber: 1 flat "
            + size(coupon.barLengthMm())
            + " x "
            + size(coupon.barWidthMm())
            + " x "
            + size(coupon.pull().plateMm()));
    lines.add("of the job's own steel and surface, straight, saw cut rather than sheared");
    return lines;
  }

  private List<String> weld() {
    RunPlan run = coupon.run();
    List<String> lines = new ArrayList<>();
    lines.add("punch the marks of the drawing and note all distances before tacking");
    lines.add("two tacks of 15 mm, one at each end, small; no clamps: the piece lies free");
    for (PassPlan pass : run.passes()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "pass %d (%s): %s, %s A, %s V, %s mm/s, over the whole length in one direction",
              pass.number(),
              pass.kind().word(),
              run.process().word(),
              Printed.number(pass.currentA(), 3),
              Printed.number(pass.voltageV(), 3),
              Printed.number(pass.travelMmPerS(), 2)));
    }
    lines.add("start from a piece at room temperature; between passes wait as the plan says");
    lines.add("note the time of each pass: length over time is the speed that counts");
    lines.add(
        "bar: one bead with the settings of the heaviest pass along one long edge, the bar lying free");
    return lines;
  }

  private List<String> measure() {
    double angle = coupon.expected().get(Measure.ANGLE);
    return List.of(
        "wait until the whole piece is cold to the hand (below 30 \u00b0C), release nothing before",
        "angle: press one half of the plate flat on a surface plate and read the lift of the"
            + " other edge at 1/4, 1/2 and 3/4 of the length; mean lift / "
            + size(coupon.plateWidthMm() / 2)
            + " is the tangent of the angle. Expected "
            + degrees(angle)
            + "\u00b0, a lift of "
            + Printed.number(Math.tan(angle) * coupon.plateWidthMm() / 2, 2)
            + " mm",
        "shrinkage: the distance of the marks before less that after, mean of both faces and of the"
            + " three places. Expected "
            + mm(coupon.expected().get(Measure.SHRINKAGE))
            + " mm",
        "camber, on the bar: a thread from end to end along the edge without the bead, the gap at"
            + " its middle, less what the bar had before. Expected "
            + mm(coupon.expected().get(Measure.CAMBER))
            + " mm");
  }

  /** For machines. */
  public ObjectNode json() {
    ObjectNode node = new ObjectMapper().createObjectNode();
    RunPlan run = coupon.run();
    node.put("weldment", weldment.name());
    node.put("run", run.name()).put("process", run.process().word()).put("machine", run.machine());
    node.put("kind", coupon.butt() ? "butt" : "tee");
    node.put("plateMm", coupon.pull().plateMm()).put("otherMm", coupon.pull().otherMm());
    node.put("plateWidthMm", coupon.plateWidthMm()).put("lengthMm", coupon.lengthMm());
    node.put("barWidthMm", coupon.barWidthMm()).put("barLengthMm", coupon.barLengthMm());
    node.put("netHeatJPerMm", run.netHeatJPerMm());
    node.put("matters", coupon.matters().word());
    ObjectNode shares = node.putObject("shares");
    coupon.shares().forEach((effect, share) -> shares.put(effect.word(), share));
    ObjectNode expected = node.putObject("expected");
    expected.put("angleRad", coupon.expected().get(Measure.ANGLE));
    expected.put("shrinkageMm", coupon.expected().get(Measure.SHRINKAGE));
    expected.put("camberMm", coupon.expected().get(Measure.CAMBER));
    ArrayNode runs = node.putArray("runs");
    for (RunPull pull : pulls) {
      ObjectNode entry = runs.addObject().put("name", pull.run().name());
      pull.movesMm().forEach((effect, mm) -> entry.put(effect.word() + "Mm", mm));
      entry.put("openMm", pull.openMm());
    }
    return node;
  }

  static String band(FactorBand band) {
    return "x "
        + Printed.number(band.low(), 2)
        + " to "
        + Printed.number(band.high(), 2)
        + ", middle "
        + Printed.number(band.median(), 2);
  }

  private static String degrees(double rad) {
    return Printed.number(Math.toDegrees(rad), 2);
  }

  private static String mm(double value) {
    return Printed.number(value, 2);
  }

  private static String size(double mm) {
    return Printed.number(mm, 4) + " mm";
  }
}
