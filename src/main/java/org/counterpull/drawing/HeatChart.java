package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.counterpull.heatjob.HeatAnswer;
import org.counterpull.heatjob.HeatAnswer.Kind;
import org.counterpull.heatjob.HeatAnswer.Start;
import org.counterpull.heatjob.HeatAnswer.Trace;
import org.counterpull.markup.Markup;

/**
 * Temperatures over the job: a curve for each probe and feature (starts of runs where there are
 * neither), limits dashed, a tick where a run begins.
 */
public final class HeatChart {
  private static final String[] COLOURS = {"#111", "#a33b00", "#00507a", "#4a6b00", "#6a2a72"};
  private static final String[] DASHES = {"", "9 4", "2 4"};
  private static final double PLOT = 380;
  private static final double LEFT = 58;
  private static final double TOP = 22;
  private static final double TEXT = 14;
  private static final double LETTER_WIDE = 13;
  private static final int LETTER_ROWS = 12;

  /** The chart goes no higher than this times the highest limit. */
  private static final double OVER_LIMIT = 3;

  /** Nearer to the air than this, metal counts as cold. */
  private static final double COLD_K = 5;

  private static final double[] NICE = {1, 2, 5, 10};

  private final HeatAnswer answer;
  private final double width;
  private final List<Trace> traces;
  private final double endS;
  private final double lowC;
  private final double highC;

  private HeatChart(HeatAnswer answer, double widthPx) {
    this.answer = answer;
    this.width = widthPx;
    List<Trace> wanted = answer.traces().stream().filter(t -> t.kind() != Kind.RUN_START).toList();
    this.traces = wanted.isEmpty() ? answer.traces() : wanted;
    this.endS = shownS();
    double high = answer.ambientC() + 10;
    double limit = 0;
    for (Trace trace : traces) {
      high = Math.max(high, trace.history().peakC());
      limit = Math.max(limit, trace.limitC().orElse(limit));
    }
    // A limit must be legible: what is far hotter leaves the chart at its top.
    high = limit > 0 ? Math.max(limit, Math.min(high, OVER_LIMIT * limit)) : high;
    this.lowC = Math.min(0, Math.floor(answer.ambientC() / 10) * 10);
    double step = step(high - lowC, 6);
    this.highC = lowC + Math.ceil((high - lowC) * 1.04 / step) * step;
  }

  /** Until all is cold, and a little longer; the last run begins before that. */
  private double shownS() {
    double last = answer.starts().stream().mapToDouble(Start::startS).max().orElse(0);
    for (Trace trace : traces) {
      for (double timeS : trace.history().timesS()) {
        boolean warm = trace.history().atC(timeS) > answer.ambientC() + COLD_K;
        last = warm ? Math.max(last, timeS) : last;
      }
    }
    return Math.max(1, Math.min(answer.endS(), 1.05 * last));
  }

  /** The drawing. */
  public static Markup of(HeatAnswer answer, double widthPx) {
    return new HeatChart(answer, widthPx).draw();
  }

  /** A round step of which about so many fit. */
  private static double step(double span, int wanted) {
    double least = span / wanted;
    double ten = Math.pow(10, Math.floor(Math.log10(least)));
    for (double nice : NICE) {
      if (nice * ten >= least) {
        return nice * ten;
      }
    }
    return 10 * ten;
  }

  private double x(double timeS) {
    return LEFT + (width - LEFT - 24) * timeS / endS;
  }

  private double y(double tempC) {
    return TOP + PLOT * (highC - Math.min(highC, tempC)) / (highC - lowC);
  }

  private Markup draw() {
    double height = TOP + PLOT + 62 + traces.size() * (TEXT + 9);
    Sheet sheet =
        new Sheet(
            "heat-chart",
            width,
            height,
            "Temperatures of " + answer.weldment(),
            "Curves over time; " + String.join("; ", traces.stream().map(this::words).toList()));
    axes(sheet);
    for (Start start : answer.starts()) {
      double x = x(start.startS());
      sheet.line(new Point(x, TOP + PLOT - 7), new Point(x, TOP + PLOT), Sheet.INK, 1.6);
    }
    limits(sheet);
    for (int i = 0; i < traces.size(); i++) {
      curve(sheet, i);
    }
    letters(sheet);
    legend(sheet);
    return sheet.done();
  }

  private void axes(Sheet sheet) {
    double step = step(highC - lowC, 6);
    for (double c = lowC; c <= highC + 1e-9; c += step) {
      sheet.line(new Point(LEFT, y(c)), new Point(x(endS), y(c)), "#d4d4d4", 1);
      sheet.text(new Point(LEFT - 8, y(c) + 5), Markup.number(c), TEXT, "end", Sheet.INK);
    }
    sheet.text(new Point(LEFT - 8, TOP - 8), "C", TEXT, "end", Sheet.INK);
    boolean minutes = endS > 600;
    double unit = minutes ? 60 : 1;
    double tick = step(endS / unit, 8);
    double bottom = TOP + PLOT;
    sheet.line(new Point(LEFT, bottom), new Point(x(endS), bottom), Sheet.INK, 1.2);
    for (double t = 0; t * unit <= endS + 1e-9; t += tick) {
      double at = x(t * unit);
      sheet.line(new Point(at, bottom), new Point(at, bottom + 5), Sheet.INK, 1);
      sheet.text(new Point(at, bottom + 6 + TEXT), Markup.number(t), TEXT, "middle", Sheet.INK);
    }
    sheet.text(
        new Point(x(endS), bottom + 12 + 2 * TEXT),
        (minutes ? "min" : "s") + "; ticks on the axis: a run begins",
        TEXT,
        "end",
        Sheet.INK);
  }

  private void limits(Sheet sheet) {
    TreeMap<Double, List<String>> limits = new TreeMap<>();
    for (int i = 0; i < traces.size(); i++) {
      String letter = letter(i);
      traces
          .get(i)
          .limitC()
          .ifPresent(c -> limits.computeIfAbsent(c, k -> new ArrayList<>()).add(letter));
    }
    limits.forEach(
        (c, letters) -> {
          sheet.line(new Point(LEFT, y(c)), new Point(x(endS), y(c)), "#b00020", 1.6, "8 5");
          sheet.text(
              new Point(x(endS), y(c) - 5),
              "limit of " + String.join(", ", letters) + ": " + Markup.number(c) + " C",
              TEXT,
              "end",
              "#b00020");
        });
  }

  private void curve(Sheet sheet, int i) {
    Trace trace = traces.get(i);
    List<Point> points = new ArrayList<>();
    double lastX = -1;
    double lastY = -1;
    for (double timeS : trace.history().timesS()) {
      if (timeS > endS) {
        break;
      }
      double x = x(timeS);
      double y = y(trace.history().atC(timeS));
      if (points.isEmpty() || Math.hypot(x - lastX, y - lastY) > 0.7) {
        points.add(new Point(x, y));
        lastX = x;
        lastY = y;
      }
    }
    points.add(new Point(x(endS), y(trace.history().atC(endS))));
    sheet.polyline(points, colour(i), 1.8, dashes(i));
  }

  /** Letters at the peaks; one that would lie on another stands in the nearest free place. */
  private void letters(Sheet sheet) {
    List<Point> taken = new ArrayList<>();
    for (int i = 0; i < traces.size(); i++) {
      Trace trace = traces.get(i);
      Point peak =
          new Point(x(Math.min(endS, trace.history().peakTimeS())), y(trace.history().peakC()) - 5);
      Point at = free(peak, taken);
      taken.add(at);
      sheet.text(at, letter(i), TEXT, "middle", colour(i));
    }
  }

  private Point free(Point peak, List<Point> taken) {
    for (int row = 0; row < LETTER_ROWS; row++) {
      for (double x = peak.x(); x < width - 12; x += LETTER_WIDE) {
        Point at = new Point(x, Math.max(TEXT, peak.y() - row * TEXT));
        if (taken.stream().noneMatch(other -> onEachOther(at, other))) {
          return at;
        }
      }
    }
    return peak;
  }

  private static boolean onEachOther(Point a, Point b) {
    return Math.abs(a.x() - b.x()) < LETTER_WIDE - 1 && Math.abs(a.y() - b.y()) < TEXT - 1;
  }

  private void legend(Sheet sheet) {
    for (int i = 0; i < traces.size(); i++) {
      double y = TOP + PLOT + 52 + i * (TEXT + 9);
      sheet.line(new Point(LEFT, y + 8), new Point(LEFT + 34, y + 8), colour(i), 2.2, dashes(i));
      sheet.text(
          new Point(LEFT + 44, y + 13),
          letter(i) + "  " + words(traces.get(i)),
          TEXT,
          "start",
          Sheet.INK);
    }
  }

  private String words(Trace trace) {
    return String.format(
        Locale.ROOT,
        "%s: at most %.0f C%s, at %s; at the end %.0f C",
        trace.kind() == Kind.RUN_START ? "start of " + trace.name() : trace.name(),
        trace.history().peakC(),
        trace.history().peakC() > highC ? " (off the top)" : "",
        endS > 600
            ? String.format(Locale.ROOT, "%.1f min", trace.history().peakTimeS() / 60)
            : String.format(Locale.ROOT, "%.0f s", trace.history().peakTimeS()),
        trace.history().endC());
  }

  private static String letter(int i) {
    String last = Character.toString('a' + i % 26);
    return i < 26 ? last : Character.toString('a' + i / 26 - 1) + last;
  }

  private static String colour(int i) {
    return COLOURS[i % COLOURS.length];
  }

  private static String dashes(int i) {
    return DASHES[i / COLOURS.length % DASHES.length];
  }
}
