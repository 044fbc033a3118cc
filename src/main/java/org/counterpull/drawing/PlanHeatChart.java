package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PlanHeat.PassStart;
import org.counterpull.plan.PlanHeat.Spot;

/**
 * The temperatures of a planned job in one picture: a thin curve for the metal of each run, a dot
 * where a pass begins, a named curve for each feature, limits dashed. What is far above the limits
 * is cut off: peaks stand in the table.
 */
public final class PlanHeatChart {
  private static final String[] COLOURS = {"#a33b00", "#00507a", "#4a6b00", "#6a2a72", "#111"};
  private static final String[] DASHES = {"", "9 4", "2 4"};
  private static final String THIN = "#a8a8a8";
  private static final String LIMIT = "#b00020";
  private static final double TOP = 24;
  private static final double[] NICE = {1, 2, 5, 10};
  private static final double ABOVE_LIMITS = 1.5;
  private static final double AFTER_LAST_S = 900;
  private static final double BEFORE_FIRST_S = 60;

  private final PlanHeat heat;
  private final String name;
  private final double width;
  private final boolean narrow;
  private final double text;
  private final double plot;
  private final double left;
  private final List<Spot> features;
  private final double fromS;
  private final double toS;
  private final double highC;

  private PlanHeatChart(Plan plan, PlanHeat heat, double widthPx) {
    this.heat = heat;
    name = plan.weldment().name();
    width = widthPx;
    narrow = widthPx < 600;
    text = narrow ? 12 : 14;
    plot = narrow ? 250 : 360;
    left = narrow ? 36 : 52;
    features = heat.spots().stream().filter(Spot::feature).toList();
    double first = heat.starts().stream().mapToDouble(PassStart::startS).min().orElse(0);
    double last = heat.starts().stream().mapToDouble(PassStart::startS).max().orElse(first);
    fromS = Math.max(0, first - BEFORE_FIRST_S);
    toS = last + AFTER_LAST_S;
    double high = 100;
    for (double limit : limits()) {
      high = Math.max(high, limit);
    }
    double step = step(high * ABOVE_LIMITS, 6);
    highC = step * Math.ceil(high * ABOVE_LIMITS / step - 1e-9);
  }

  /** The drawing; empty for a plan whose temperatures were not worked out. */
  public static Optional<Markup> of(Plan plan, double widthPx) {
    return plan.heat()
        .filter(heat -> !heat.starts().isEmpty())
        .map(heat -> new PlanHeatChart(plan, heat, widthPx).draw());
  }

  private TreeSet<Double> limits() {
    TreeSet<Double> limits = new TreeSet<>();
    heat.starts().forEach(start -> limits.add(start.interpassMaxC()));
    features.forEach(feature -> feature.limitC().ifPresent(limits::add));
    return limits;
  }

  /** A round step of which about so many fit. */
  private static double step(double span, int wanted) {
    double least = span / wanted;
    double ten = Math.pow(10, Math.floor(Math.log10(least)));
    for (double nice : NICE) {
      if (nice * ten >= least * (1 - 1e-9)) {
        return nice * ten;
      }
    }
    return 10 * ten;
  }

  private double x(double timeS) {
    return left + (width - left - 12) * (timeS - fromS) / (toS - fromS);
  }

  private double y(double tempC) {
    return TOP + plot * (highC - Math.max(0, Math.min(highC, tempC))) / highC;
  }

  private Markup draw() {
    List<String> legend = legend();
    double row = text + 9;
    double height = TOP + plot + 3 * text + 16 + legend.size() * row;
    Sheet sheet =
        new Sheet(
            "plan-heat-chart",
            width,
            height,
            "Temperatures while " + name + " is welded",
            String.join("; ", legend));
    axes(sheet);
    for (Spot spot : heat.spots()) {
      if (!spot.feature()) {
        curve(sheet, spot, THIN, 1, "");
      }
    }
    for (int i = 0; i < features.size(); i++) {
      curve(sheet, features.get(i), colour(i), 2, dashes(i));
    }
    for (double limit : limits()) {
      sheet.line(new Point(left, y(limit)), new Point(x(toS), y(limit)), LIMIT, 1.6, "8 5");
    }
    for (PassStart start : heat.starts()) {
      Point at = new Point(x(start.startS()), y(start.hottestC()));
      sheet.circle(at, narrow ? 2.6 : 3.4, start.tooWarm() ? LIMIT : Sheet.INK, "#fff", 0.8);
    }
    limitWords(sheet);
    double top = TOP + plot + 3 * text + 14;
    for (int i = 0; i < legend.size(); i++) {
      sign(sheet, i, top + i * row);
      sheet.text(
          new Point(46, top + i * row + text * 0.8), legend.get(i), text, "start", Sheet.INK);
    }
    return sheet.done();
  }

  private void axes(Sheet sheet) {
    double step = step(highC, narrow ? 5 : 6);
    for (double c = 0; c <= highC + 1e-9; c += step) {
      sheet.line(new Point(left, y(c)), new Point(x(toS), y(c)), "#dcdcdc", 1);
      sheet.text(new Point(left - 6, y(c) + 5), Markup.number(c), text, "end", Sheet.INK);
    }
    sheet.text(new Point(left - 6, TOP - 10), "\u00b0C", text, "end", Sheet.INK);
    double bottom = TOP + plot;
    sheet.line(new Point(left, bottom), new Point(x(toS), bottom), Sheet.INK, 1.2);
    double tick = step((toS - fromS) / 60, narrow ? 4 : 9);
    for (double t = tick * Math.ceil(fromS / 60 / tick); t * 60 <= toS; t += tick) {
      double at = x(t * 60);
      sheet.line(new Point(at, bottom), new Point(at, bottom + 5), Sheet.INK, 1);
      sheet.text(new Point(at, bottom + 6 + text), Markup.number(t), text, "middle", Sheet.INK);
    }
    String words = narrow ? "min" : "min from the beginning of the job";
    sheet.text(new Point(x(toS), bottom + 10 + 2 * text), words, text, "end", Sheet.INK);
  }

  private void limitWords(Sheet sheet) {
    double lastY = -1e9;
    for (double limit : limits().descendingSet()) {
      double at = Math.max(y(limit) - 5, lastY + text + 1);
      String words = (narrow ? "limit " : "limit ") + Math.round(limit) + " \u00b0C";
      sheet.text(new Point(x(toS), at), words, text, "end", LIMIT);
      lastY = at;
    }
  }

  private void curve(Sheet sheet, Spot spot, String colour, double stroke, String dashes) {
    List<Point> points = new ArrayList<>();
    for (int n = 0; n < spot.timesS().size(); n++) {
      double timeS = spot.timesS().get(n);
      if (timeS >= fromS && timeS <= toS) {
        points.add(new Point(x(timeS), y(spot.tempsC().get(n))));
      }
    }
    if (points.size() > 1) {
      sheet.polyline(points, colour, stroke, dashes);
    }
  }

  private void sign(Sheet sheet, int row, double y) {
    double middle = y + text * 0.45;
    Point from = new Point(8, middle);
    Point to = new Point(38, middle);
    int first = features.size();
    if (row < first) {
      sheet.line(from, to, colour(row), 2.2, dashes(row));
    } else if (row == first) {
      sheet.circle(new Point(23, middle), 3.4, Sheet.INK, "#fff", 0.8);
    } else if (row == first + 1) {
      sheet.line(from, to, THIN, 1.4, "");
    } else {
      sheet.line(from, to, LIMIT, 1.6, "8 5");
    }
  }

  private List<String> legend() {
    List<String> lines = new ArrayList<>();
    for (Spot feature : features) {
      lines.add(
          String.format(
              Locale.ROOT,
              "%s: at most %.0f \u00b0C%s",
              feature.name(),
              feature.peakC(),
              feature
                  .limitC()
                  .map(c -> String.format(Locale.ROOT, ", limit %.0f \u00b0C", c))
                  .orElse("")));
    }
    lines.add(
        narrow
            ? "hottest metal when a pass begins"
            : "hottest metal on the line when a pass begins");
    lines.add("metal at the middle of each run");
    lines.add(
        String.format(
            Locale.ROOT,
            narrow
                ? "limits; cut off at %.0f \u00b0C"
                : "limits; what is above %.0f \u00b0C is cut off",
            highC));
    return lines;
  }

  private static String colour(int i) {
    return COLOURS[i % COLOURS.length];
  }

  private static String dashes(int i) {
    return DASHES[i / COLOURS.length % DASHES.length];
  }
}
