package org.counterpull.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.counterpull.drawing.MountDrawing;
import org.counterpull.mount.BoreFigure;
import org.counterpull.mount.HeatFigures;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.MountCase;
import org.counterpull.mount.StrengthUse;
import org.counterpull.mount.Warmth;
import org.counterpull.mount.Way;
import org.counterpull.mount.WayAnswer;

/** Directly or how else, told in a summary, JSON, a page and drawings. */
public final class MountReport {
  private static final String ROW = "  %-30s %-6s %7s %9s %18s %8s %8s %6s";

  private final List<MountAnswer> answers;
  private final List<String> leftOut;

  /**
   * The report.
   *
   * @param answers one for each thing that is welded to a tube
   * @param leftOut what was not looked at, in sentences
   */
  public MountReport(List<MountAnswer> answers, List<String> leftOut) {
    this.answers = List.copyOf(answers);
    this.leftOut = List.copyOf(leftOut);
  }

  public List<MountAnswer> answers() {
    return answers;
  }

  /** Texts by file name. */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("mount.html", new MountPage(answers, leftOut).html());
    files.put("mount.json", json());
    for (MountAnswer answer : answers) {
      files.put(
          "mount-" + answer.mount().name().replaceAll("[^A-Za-z0-9-]+", "-") + ".svg",
          MountDrawing.of(answer, 960).toString());
    }
    return files;
  }

  public String json() {
    return MountJson.of(answers, leftOut);
  }

  /** For the terminal. */
  public String summary() {
    StringBuilder text = new StringBuilder();
    for (MountAnswer answer : answers) {
      head(text, answer.mount());
      line(text, "");
      line(text, ROW, "way", "", "bore C", "seal C", "bore moves mm", "through", "load", "min");
      for (WayAnswer way : answer.ways()) {
        row(text, answer, way);
      }
      line(text, "");
      answer.verdict().forEach(sentence -> wrapped(text, sentence));
      WayAnswer taken = answer.of(answer.taken());
      if (answer.taken() != Way.AS_DRAWN) {
        taken.parts().forEach(p -> line(text, "  part: %s", p));
        taken.before().forEach(b -> line(text, "  before: %s", b));
        taken.after().forEach(a -> line(text, "  after: %s", a));
      }
      answer.hole().ifPresent(h -> h.words().forEach(w -> wrapped(text, "  hole: " + w)));
      line(text, "Not known:");
      answer.unknown().forEach(u -> wrapped(text, "  " + u));
      line(text, "Taken to be so: %s.", String.join("; ", answer.mount().assumptions()));
      line(text, "");
    }
    leftOut.forEach(l -> wrapped(text, "Left out: " + l));
    return text.toString();
  }

  private static void head(StringBuilder text, MountCase mount) {
    line(
        text,
        "%s: %s on a tube %s x %s mm, bore %s mm; 2.5 sqrt(R t) = %.1f mm",
        mount.name(),
        mount.partner().name(),
        trim(mount.tube().outsideMm()),
        trim(mount.tube().wallMm()),
        trim(mount.tube().insideMm()),
        mount.tube().fadingMm());
  }

  private static void row(StringBuilder text, MountAnswer answer, WayAnswer way) {
    line(
        text,
        ROW,
        way.way().words(),
        mark(way),
        way.heat().map(h -> celsius(h.borePeakC())).orElse("-"),
        way.heat().map(h -> hottest(h)).orElse("-"),
        way.mostMoved().map(MountReport::movement).orElse("-"),
        way.bores().stream().map(b -> b.through().words()).findFirst().orElse("-"),
        way.mostUsed().map(MountReport::percent).orElse("-"),
        minutes(way));
  }

  /** Whole minutes; a way that does not work here takes none. */
  static String minutes(WayAnswer way) {
    return way.minutes() == 0 ? "-" : String.format(Locale.ROOT, "%.0f", Math.ceil(way.minutes()));
  }

  static String mark(WayAnswer way) {
    return switch (way.outcome()) {
      case FITS -> "fits";
      case FITS_IF -> "if";
      case DONT -> "don't";
    };
  }

  static String hottest(HeatFigures heat) {
    return heat.near().stream()
        .filter(w -> w.limit().isPresent())
        .max(java.util.Comparator.comparingDouble(Warmth::peakC))
        .map(w -> celsius(w.peakC()) + (w.spoilt() ? "!" : ""))
        .orElse("-");
  }

  static String movement(BoreFigure bore) {
    var change = bore.movement().changeMm();
    return change.high() < 0.0005
        ? "0"
        : String.format(
            Locale.ROOT,
            change.high() < 0.05 ? "%.3f (%.3f-%.3f)" : "%.3f (%.2f-%.2f)",
            change.value(),
            change.low(),
            change.high());
  }

  static String percent(StrengthUse use) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * use.use());
  }

  static String celsius(double tempC) {
    return String.format(Locale.ROOT, "%.0f", tempC);
  }

  static String trim(double mm) {
    return org.counterpull.quantity.Printed.number(mm, 4);
  }

  private static void wrapped(StringBuilder text, String sentence) {
    StringBuilder row = new StringBuilder();
    for (String word : sentence.split(" ")) {
      if (row.length() + word.length() > 98) {
        text.append(row.toString().stripTrailing()).append('\n');
        row = new StringBuilder("  ");
      }
      row.append(word).append(' ');
    }
    text.append(row.toString().stripTrailing()).append('\n');
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values).stripTrailing()).append('\n');
  }
}
