package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.plan.PinLoad;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.PinRow.Bore;
import org.counterpull.plan.PinRow.Finish;
import org.counterpull.plan.PinRow.Turns;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.Share;

/** Rows of bores in words. */
final class PinWords {
  private static final int MOST_SHARES = 5;
  private static final double LEAST_SHARE_MM = 0.005;

  private final Measures measures;

  PinWords(Measures measures) {
    this.measures = measures;
  }

  /** Heading of a row. */
  static String title(PinRow row) {
    return (row.hinge() ? "Pin line of " : "Pin of ") + row.name();
  }

  private String fine(double mm) {
    return measures.fine(mm).text();
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** The answer in one sentence. */
  String answer(PinRow row) {
    String fit =
        "pin "
            + measures.length(row.fit().pinMm()).first()
            + " in "
            + measures.length(row.fit().boreMm()).first();
    String left =
        row.fit().left().map(c -> left(c.value())).orElse("the file has no check to work it out by")
            + row.fit().leftAtWorst().map(c -> ", at worst " + left(c.value())).orElse("");
    return row.name()
        + ": turns by hand as welded: "
        + row.turns().words()
        + " ("
        + fit
        + "; "
        + left
        + ")"
        + once(row.finish())
        + ".";
  }

  private static String once(Finish finish) {
    return switch (finish.way()) {
      case AS_WELDED, UNTOLD -> "";
      case REAM_EACH -> "; once each bore is reamed: yes";
      case REAM_IN_LINE -> "; once the bores are reamed in line: yes";
    };
  }

  private String left(double mm) {
    return mm >= 0 ? fine(mm) + " left" : "binds by " + fine(-mm);
  }

  /** Everything that is said of a row, in sentences. */
  List<String> sentences(PinRow row) {
    List<String> all = new ArrayList<>();
    all.add(capital(answer(row)));
    row.fit().zone().ifPresent(zone -> all.add(line(row, zone)));
    if (row.turns() == Turns.UNTOLD) {
      all.add(
          "Write a coaxial check for these parts into the file: with it the plan works out their shape.");
    }
    shares(row.shares()).ifPresent(all::add);
    all.add(finish(row));
    PinBenchWords bench = new PinBenchWords(measures);
    all.add(bench.bench(row));
    PinBenchWords.turning(row).ifPresent(all::add);
    all.addAll(warm(row));
    row.bench().grease().forEach(g -> all.add(PinBenchWords.grease(g)));
    row.load().ifPresent(load -> all.addAll(load(row, load)));
    return all;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private String line(PinRow row, Band zone) {
    long pieces = row.bores().stream().map(Bore::piece).distinct().count();
    String hung =
        pieces > 1
            ? " Its "
                + pieces
                + " pieces are hung into line with each other; each is measured from a line of its own."
            : "";
    String closing =
        row.fit().closing() > 0
            ? " Welding closes the tightest bore by up to " + fine(row.fit().closing()) + "."
            : "";
    return "All ends of its bores lie within "
        + fine(zone.expected())
        + " of one straight line, 9 times in 10 between "
        + fine(zone.low())
        + " and "
        + fine(zone.high())
        + "; a pin bears twice that out of its clearance of "
        + fine(row.fit().clearanceMm())
        + "."
        + closing
        + hung;
  }

  private Optional<String> shares(List<Share> shares) {
    List<String> most =
        shares.stream()
            .filter(s -> Math.abs(s.mm()) >= LEAST_SHARE_MM)
            .limit(MOST_SHARES)
            .map(s -> s.run() + " " + text("%+.2f mm", s.mm()))
            .toList();
    return most.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The line is moved most by "
                + String.join(", ", most)
                + "; the rest is in the table of checks and in plan.json.");
  }

  private String finish(PinRow row) {
    Finish finish = row.finish();
    return switch (finish.way()) {
      case AS_WELDED ->
          row.hinge()
              ? "Ream: no. Try the pin cold; clean out scale and spatter only."
              : "Ream: the pull does not ask for it: holes drilled to size before welding take the pin. Drilled"
                  + " undersize and finished cold, as the steps say, is safe as well.";
      case REAM_EACH ->
          "Ream: yes, each bore back to "
              + measures.length(row.fit().boreMm()).text()
              + " when cold: welding has closed them by up to "
              + fine(finish.stockMm())
              + ", and that alone is in the way.";
      case REAM_IN_LINE ->
          "Ream: yes, in line. Leave the bores at "
              + measures.length(finish.beforeMm()).text()
              + " or less before welding ("
              + fine(finish.stockMm())
              + " of stock), then ream all of them to "
              + measures.length(row.fit().boreMm()).text()
              + " in one set-up when cold, the reamer guided through the far bore. Without that stock only a pin of "
              + measures.length(thinner(row)).text()
              + " goes through for certain.";
      case UNTOLD -> "Ream: decide when cold, with the pin in hand.";
    };
  }

  /** The thickest pin that goes through at the far end of the band, to a tenth of a mm. */
  private static double thinner(PinRow row) {
    double left = row.fit().leftAtWorst().orElseThrow().value();
    return Math.floor(10 * (row.fit().pinMm() + left)) / 10;
  }

  private List<String> warm(PinRow row) {
    List<String> all = new ArrayList<>();
    PinRow.Warm warm = row.warm();
    warm.bindsAtK()
        .ifPresent(
            k ->
                all.add(
                    k.value() > 0
                        ? "While warm: a straight pin binds as long as one face of "
                            + warm.carrier().orElse("the bar")
                            + " is more than "
                            + text("%.0f K", k.value())
                            + " warmer than the other; wait until both feel the same before judging."
                        : "While warm: nothing is left for a bow of "
                            + warm.carrier().orElse("the bar")
                            + "; judge only when cold."));
    warm.playGoneAtK()
        .ifPresent(
            k ->
                all.add(
                    "Side play of "
                        + measures.length(warm.sidePlayMm().orElseThrow()).text()
                        + " is used up at the row's ends when one piece is "
                        + text("%.0f K", k)
                        + " warmer than the other."));
    if (warm.hottestC().isPresent()) {
      all.add(
          "The hottest bore reaches "
              + measures.temperature(warm.hottestC().get()).text()
              + warm.atLastArcC()
                  .map(
                      c ->
                          " and has "
                              + measures.temperature(c).text()
                              + " when the last pass begins")
                  .orElse("")
              + ". The rod stays in until it is hand-warm.");
    } else if (row.hinge()) {
      all.add(
          "How warm the bores get is not worked out: this plan was made without the heat model.");
    }
    return all;
  }

  private List<String> load(PinRow row, PinLoad load) {
    List<String> all = new ArrayList<>();
    all.add(
        capital(load.by())
            + text(
                ": %.1f kN on the pin, checked with 1.5 times as much (EN 1990); %.0f mm between outer plates of %.0f mm.",
                load.forceN() / 1000, load.middleMm(), load.outerMm()));
    if (load.weldsPlannedForLess()) {
      all.add(
          load.weldLoadN() > 0
              ? text(
                  "The file lets the welds of these lugs carry %.1f kN together: less than the pin can bring."
                      + " Raise their load in the file to %.1f kN each, or set the relief valve so that the"
                      + " cylinder can't push more.",
                  load.weldLoadN() / 1000, Math.ceil(load.forceN() / row.bores().size() / 100) / 10)
              : "The file gives these lugs no load, so their welds are not checked: write load: with each joint.");
    }
    all.addAll(load.assumed());
    all.add(
        load.tooWeak()
            ? "Too weak as drawn: see the table. An engineer decides on anything lifted, ridden or stood under."
            : "An engineer decides on anything lifted, ridden or stood under.");
    return all;
  }
}
