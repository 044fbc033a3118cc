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

/** One mount on a page: verdict, the ways side by side, the section. */
final class MountSection {
  private static final double WIDE_PX = 860;
  private static final double NARROW_PX = 340;

  private MountSection() {}

  /** The section on the mount sheet. */
  static Markup of(MountAnswer answer) {
    return section("", answer);
  }

  /** The section on a plan: the way that is taken in full, the others in the table. */
  static Markup ofPlan(MountAnswer answer) {
    return section(
        "mount-", answer, way(answer.of(answer.taken())), list("Not known", answer.unknown()));
  }

  /** Its name on a plan. */
  static String title(MountAnswer answer) {
    return answer.mount().name() + ": straight on the tube, or how else";
  }

  private static Markup section(String prefix, MountAnswer answer, Markup... more) {
    boolean stop = answer.of(Way.AS_DRAWN).outcome() == Outcome.DONT;
    Markup verdict = new Markup().open("div", "class", stop ? "answer stop" : "answer");
    answer.verdict().forEach(v -> verdict.element("p", v));
    verdict.close();
    Markup whole = new Markup().add(verdict).add(PageParts.table(table(answer)));
    whole.add(
        PageParts.drawing(MountDrawing.of(answer, WIDE_PX), MountDrawing.of(answer, NARROW_PX)));
    for (Markup piece : more) {
      whole.add(piece);
    }
    String id = prefix + answer.mount().name().replaceAll("[^A-Za-z0-9-]+", "-");
    return PageParts.section(id, title(answer), whole);
  }

  static Table table(MountAnswer answer) {
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
    return new Table(heads, answer.ways().stream().map(MountSection::row).toList());
  }

  private static List<Shown> row(WayAnswer way) {
    return java.util.stream.Stream.of(
            way.way().words(),
            way.outcome().words(),
            way.heat().map(h -> MountReport.celsius(h.borePeakC())).orElse("-"),
            way.heat().map(MountReport::hottest).orElse("-"),
            way.mostMoved().map(MountReport::movement).orElse("-"),
            way.bores().stream().map(b -> b.through().words()).findFirst().orElse("-"),
            way.mostUsed().map(MountReport::percent).orElse("-"),
            Integer.toString(way.passes()),
            MountReport.minutes(way))
        .map(Shown::only)
        .toList();
  }

  /** One way in full. */
  static Markup way(WayAnswer way) {
    Markup out = new Markup();
    out.element("h3", way.way().words() + ": " + way.outcome().words());
    out.add(PageParts.bullets(way.deciding()));
    out.add(list("Parts", way.parts()));
    out.add(list("Before", way.before()));
    out.add(list("After", way.after()));
    out.add(list("Bore", way.bores().stream().map(MountSection::bore).toList()));
    out.add(list("Strength", way.strength().stream().map(MountSection::use).toList()));
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
