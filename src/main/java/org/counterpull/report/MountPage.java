package org.counterpull.report;

import java.util.List;
import java.util.Locale;
import org.counterpull.drawing.MountDrawing;
import org.counterpull.markup.Markup;
import org.counterpull.mount.BoreFigure;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.Outcome;
import org.counterpull.mount.StrengthUse;
import org.counterpull.mount.Way;
import org.counterpull.mount.WayAnswer;

/** {@code mount.html}: the answer first, the ways side by side, the section, then each way. */
final class MountPage {
  private final List<MountAnswer> answers;
  private final List<String> leftOut;

  MountPage(List<MountAnswer> answers, List<String> leftOut) {
    this.answers = answers;
    this.leftOut = leftOut;
  }

  String html() {
    Markup out = new Markup().doctype();
    out.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en").open("head");
    out.empty("meta", "charset", "utf-8");
    out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    out.element("title", "Directly, or how else").style("/report/page.css").close();
    out.open("body").open("main").text("\n");
    out.open("div", "class", "head").element("p", "Mount", "class", "kind");
    out.element("h1", "Directly, or how else").close();
    for (MountAnswer answer : answers) {
      answer(out, answer);
    }
    if (!leftOut.isEmpty()) {
      out.add(PageParts.section("left-out", "Not looked at", PageParts.bullets(leftOut)));
    }
    out.element(
        "p",
        "This sheet plans; it certifies nothing. Alter a cylinder and its pressure is yours: prove it with"
            + " liquid, guarded, never with air. Anything that is lifted, ridden or stood under needs an"
            + " engineer.");
    return out.close().close().close().toString() + "\n";
  }

  private static void answer(Markup out, MountAnswer answer) {
    String id = answer.mount().name().replaceAll("[^A-Za-z0-9-]+", "-");
    boolean stop = answer.of(Way.AS_DRAWN).outcome() == Outcome.DONT;
    Markup verdict = new Markup().open("div", "class", stop ? "answer stop" : "answer");
    answer.verdict().forEach(v -> verdict.element("p", v));
    verdict.close();
    out.add(
        PageParts.section(
            id,
            answer.mount().name(),
            verdict,
            PageParts.table(table(answer)),
            MountDrawing.of(answer, 960)));
    for (WayAnswer way : answer.ways()) {
      out.add(way(way));
    }
    answer
        .hole()
        .ifPresent(h -> out.element("h3", "Hole of the lug").add(PageParts.bullets(h.words())));
    out.element("h3", "Not known").add(PageParts.bullets(answer.unknown()));
    out.element("h3", "Taken to be so").add(PageParts.bullets(answer.mount().assumptions()));
  }

  private static Table table(MountAnswer answer) {
    List<String> heads =
        List.of(
            "way",
            "verdict",
            "bore C",
            "hottest near C",
            "bore moves mm",
            "goes through",
            "load",
            "passes",
            "min");
    return new Table(heads, answer.ways().stream().map(MountPage::row).toList());
  }

  private static List<Shown> row(WayAnswer way) {
    return java.util.stream.Stream.of(
            way.way().words(),
            way.outcome().words(),
            way.heat().map(h -> MountReport.celsius(h.borePeakC())).orElse("-"),
            way.heat().map(MountReport::hottest).orElse("-"),
            way.bores().stream()
                .max(java.util.Comparator.comparingDouble(b -> b.movement().changeMm().value()))
                .map(MountReport::movement)
                .orElse("-"),
            way.bores().stream().map(b -> b.through().words()).findFirst().orElse("-"),
            way.mostUsed().map(MountReport::percent).orElse("-"),
            Integer.toString(way.passes()),
            MountReport.minutes(way))
        .map(Shown::only)
        .toList();
  }

  private static Markup way(WayAnswer way) {
    Markup out = new Markup();
    out.element("h3", way.way().words() + ": " + way.outcome().words());
    out.add(PageParts.bullets(way.deciding()));
    out.add(list("Parts", way.parts()));
    out.add(list("Before", way.before()));
    out.add(list("After", way.after()));
    out.add(list("Bore", way.bores().stream().map(MountPage::bore).toList()));
    out.add(list("Strength", way.strength().stream().map(MountPage::use).toList()));
    return out;
  }

  private static Markup list(String head, List<String> texts) {
    Markup out = new Markup();
    if (!texts.isEmpty()) {
      out.open("p").element("strong", head).close().add(PageParts.bullets(texts));
    }
    return out;
  }

  private static String bore(BoreFigure bore) {
    return String.format(
        Locale.ROOT,
        "%s: mean diameter %+.3f mm, out of round %.3f mm, local dent %.3f mm deep, at %.0f mm from the"
            + " middle of the weld; what slides or turns in it goes through: %s",
        bore.what(),
        bore.movement().meanMm(),
        bore.movement().outOfRoundMm(),
        bore.movement().dentMm(),
        bore.movement().atZMm(),
        bore.through().words());
  }

  private static String use(StrengthUse use) {
    return String.format(
        Locale.ROOT,
        "%s: %s of %s, %.0f %% (%s)",
        use.what(),
        use.load(),
        use.allowable(),
        100 * use.use(),
        use.source());
  }
}
