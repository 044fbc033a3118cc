package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.markup.Markup;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;

/**
 * The job over time: arc, waits by cause, other work, one band for each place, folded into as many
 * lines as the width asks for.
 */
public final class TimeChart {
  private static final double[] LINE_MINUTES = {10, 20, 30, 60, 120, 240, 480, 960, 1920, 3840};
  private static final double BAND = 34;
  private static final double LINE_GAP = 40;
  private static final int MOST_CAUSES = 5;
  private static final double PLACE_PX = 170;

  private final Plan plan;
  private final double width;
  private final boolean narrow;
  private final double lineS;
  private final double endS;
  private final List<String> places;
  private final Map<String, Double> causes = new LinkedHashMap<>();
  private final double left;
  private final double text;

  private TimeChart(Plan plan, double widthPx) {
    this.plan = plan;
    width = widthPx;
    narrow = widthPx < 600;
    text = narrow ? 13 : 14;
    endS = plan.operations().stream().mapToDouble(Timed::endS).max().orElse(0);
    lineS = lineSeconds(endS / (narrow ? 8 : 3));
    Set<String> names = new LinkedHashSet<>();
    plan.operations().forEach(t -> names.add(t.operation().place()));
    places = List.copyOf(names);
    left = places.size() > 1 && !narrow ? PLACE_PX : 8;
    for (Timed timed : plan.operations()) {
      if (waits(timed.operation().kind())) {
        causes.merge(cause(timed.operation()), timed.endS() - timed.startS(), Double::sum);
      }
    }
  }

  /**
   * The drawing; empty for a job without operations.
   *
   * @param id keeps the names inside the drawing apart from those of others on the page
   */
  public static Optional<Markup> of(Plan plan, double widthPx, String id) {
    return plan.operations().isEmpty()
        ? Optional.empty()
        : Optional.of(new TimeChart(plan, widthPx).draw(id));
  }

  private static double lineSeconds(double wantedS) {
    for (double minutes : LINE_MINUTES) {
      if (minutes * 60 >= wantedS) {
        return minutes * 60;
      }
    }
    return wantedS;
  }

  private static boolean waits(Operation.Kind kind) {
    return kind == Operation.Kind.WAIT || kind == Operation.Kind.COOL;
  }

  /** The cause of a wait: what its reason says before the colon. */
  private static String cause(Operation operation) {
    if (operation.why().isEmpty()) {
      return operation.kind().words();
    }
    String sentence = operation.why().get(0);
    int colon = sentence.indexOf(':');
    return colon > 0 ? sentence.substring(0, colon) : sentence;
  }

  private Markup draw(String id) {
    int lines = Math.max(1, (int) Math.ceil(endS / lineS - 1e-9));
    double lineHeight = places.size() * BAND + LINE_GAP;
    List<String> legend = legend();
    double height = lines * lineHeight + legend.size() * (text + 10) + 24;
    Sheet sheet =
        new Sheet(
            "time-chart",
            width,
            height,
            "Time chart of " + plan.weldment().name(),
            String.join("; ", legend) + "; " + minutes(endS) + " in all");
    sheet.hatch(id + "-wait", 6, 45, "#fff", 1.6);
    for (int line = 0; line < lines; line++) {
      axis(sheet, line, line * lineHeight + 18);
    }
    for (Timed timed : plan.operations()) {
      bars(sheet, timed, lineHeight, id);
    }
    legend(sheet, legend, lines * lineHeight + 18, id);
    return sheet.done();
  }

  private double x(double secondsIntoLine) {
    return left + (width - left - 14) * secondsIntoLine / lineS;
  }

  private void axis(Sheet sheet, int line, double y) {
    double bottom = y + places.size() * BAND;
    sheet.line(new Point(left, bottom), new Point(x(lineS), bottom), Sheet.INK, 1.2);
    int ticks = narrow ? 5 : lineS % 720 == 0 ? 12 : 10;
    for (int k = 0; k <= ticks; k++) {
      double at = x(lineS * k / ticks);
      double minutes = (line + (double) k / ticks) * lineS / 60;
      sheet.line(new Point(at, bottom), new Point(at, bottom + 5), Sheet.INK, 1);
      String anchor = k == 0 ? "start" : k == ticks ? "end" : "middle";
      String unit = k == ticks ? " min" : "";
      if (k < ticks - 1 || k == ticks || !narrow && k == ticks - 1) {
        sheet.text(
            new Point(k == ticks ? at + 12 : at, bottom + 5 + text),
            Markup.number(minutes) + unit,
            text,
            anchor,
            Sheet.INK);
      }
    }
    for (int i = 0; i < places.size() && places.size() > 1; i++) {
      double middle = y + (i + 0.5) * BAND;
      if (narrow) {
        String place = shortened(places.get(i), width - 16, 12);
        sheet.text(new Point(left, y + i * BAND + 8), place, 12, "start", Sheet.INK);
      } else {
        String place = shortened(places.get(i), left - 12, text);
        sheet.text(new Point(left - 8, middle + 5), place, text, "end", Sheet.INK);
      }
    }
  }

  private void bars(Sheet sheet, Timed timed, double lineHeight, String id) {
    Operation operation = timed.operation();
    double arcS =
        operation.kind() == Operation.Kind.WELD
            ? operation.run().flatMap(this::run).map(RunPlan::arcTimeS).orElse(0.0)
            : 0;
    double arcEnd = Math.min(timed.endS(), timed.startS() + arcS);
    String rest = waits(operation.kind()) ? "url(#" + id + "-wait)" : "#dedede";
    bar(sheet, operation, timed.startS(), arcEnd, Sheet.INK, "", lineHeight);
    String letter = waits(operation.kind()) ? letter(cause(operation)) : "";
    bar(sheet, operation, arcEnd, timed.endS(), rest, letter, lineHeight);
  }

  private Optional<RunPlan> run(String name) {
    return plan.runs().stream().filter(r -> r.name().equals(name)).findFirst();
  }

  private void bar(
      Sheet sheet,
      Operation operation,
      double fromS,
      double toS,
      String fill,
      String letter,
      double lineHeight) {
    int place = places.indexOf(operation.place());
    double from = fromS;
    while (toS - from > 1e-9) {
      int line = (int) Math.floor(from / lineS + 1e-9);
      double to = Math.min(toS, (line + 1) * lineS);
      double x = x(from - line * lineS);
      double wide = Math.max(0.8, x(to - line * lineS) - x);
      double y = line * lineHeight + 18 + place * BAND + 10;
      sheet.box(new Point(x, y), wide, BAND - 12, 0, fill, Sheet.INK);
      if (!letter.isEmpty() && wide > text) {
        Point middle = new Point(x + wide / 2, y + (BAND - 12) / 2);
        sheet.circle(middle, text * 0.62, "#fff", "#fff", 0.5);
        sheet.bold(new Point(middle.x(), middle.y() + text * 0.36), letter, text, "middle");
      }
      from = to;
    }
  }

  private String letter(String cause) {
    int i = new ArrayList<>(causes.keySet()).indexOf(cause);
    return i < MOST_CAUSES ? Character.toString('a' + i) : "x";
  }

  private List<String> legend() {
    List<String> lines = new ArrayList<>();
    lines.add("arc: " + minutes(plan.consumables().arcS()));
    lines.add("other work");
    double others = 0;
    int i = 0;
    for (Map.Entry<String, Double> cause : causes.entrySet()) {
      if (i < MOST_CAUSES) {
        lines.add(
            "wait "
                + Character.toString('a' + i)
                + ", "
                + minutes(cause.getValue())
                + ": "
                + cause.getKey());
      } else {
        others += cause.getValue();
      }
      i++;
    }
    if (others > 0) {
      lines.add("wait x, " + minutes(others) + ": other causes, see the steps");
    }
    return lines;
  }

  private void legend(Sheet sheet, List<String> lines, double top, String id) {
    for (int i = 0; i < lines.size(); i++) {
      double y = top + i * (text + 10);
      String fill = i == 0 ? Sheet.INK : i == 1 ? "#dedede" : "url(#" + id + "-wait)";
      sheet.box(new Point(8, y), 26, text, 0, fill, Sheet.INK);
      String shown = shortened(lines.get(i), width - 50, text);
      sheet.text(new Point(42, y + text * 0.85), shown, text, "start", Sheet.INK);
    }
  }

  private static String shortened(String line, double room, double size) {
    int most = (int) (room / Sheet.textWidth("x", size));
    return line.length() <= most ? line : line.substring(0, most - 1) + "\u2026";
  }

  private static String minutes(double seconds) {
    return Markup.number(Math.round(seconds / 6) / 10.0) + " min";
  }
}
