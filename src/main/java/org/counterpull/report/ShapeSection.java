package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.drawing.ShapeDrawing;
import org.counterpull.markup.Markup;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Compared;
import org.counterpull.plan.PullAnswer.Slender;
import org.counterpull.plan.PullAnswer.Verdict;

/** How the weldment comes out: orders beside each other, checks, presets, a drawing. */
final class ShapeSection {
  private static final double WIDE_PX = 860;
  private static final double NARROW_PX = 340;

  private final PullAnswer answer;
  private final ShapeWords words;

  ShapeSection(PullAnswer answer, Measures measures) {
    this.answer = answer;
    this.words = new ShapeWords(measures);
  }

  Markup write() {
    Markup out = new Markup();
    out.add(
        PageParts.drawing(
            ShapeDrawing.of(answer, WIDE_PX, words::expected),
            ShapeDrawing.of(answer, NARROW_PX, words::expected)));
    out.add(PageParts.table(verdicts()));
    out.add(PageParts.bullets(why()));
    out.add(PageParts.table(orders()));
    out.add(PageParts.bullets(slender()));
    for (CheckAnswer check : answer.checks()) {
      out.element("h3", check.check().name());
      out.add(PageParts.bullets(check(check)));
    }
    out.add(PageParts.bullets(answer.notes()));
    return out;
  }

  /** What to expect of each check. */
  Table verdicts() {
    List<List<Shown>> rows = new ArrayList<>();
    for (CheckAnswer check : answer.checks()) {
      boolean told = check.verdict() != Verdict.UNTOLD;
      rows.add(
          List.of(
              Shown.only(check.check().name()),
              Shown.only(told ? words.expected(check) : ""),
              Shown.only(told ? words.between(check) : ""),
              Shown.only(words.fine(check.toleranceMm())),
              Shown.only(check.verdict().words())));
    }
    return new Table(List.of("check", "expected", "nine of ten", "tolerance", "verdict"), rows);
  }

  /** Why this order, in words and figures. */
  List<String> why() {
    return new OrderWords(answer).sentences();
  }

  /** Every note, buckling first. */
  List<String> notes() {
    List<String> all = slender();
    all.addAll(answer.notes());
    return all;
  }

  /** The checks, in file order. */
  List<CheckAnswer> checks() {
    return answer.checks();
  }

  /** Orders beside each other. */
  Table orders() {
    List<String> heads = new ArrayList<>(List.of("order of welding"));
    answer.checks().forEach(check -> heads.add(check.check().name()));
    heads.add("worst / tolerance");
    heads.add("turning, moving");
    List<List<Shown>> rows = new ArrayList<>();
    for (Compared order : answer.orders()) {
      List<Shown> row = new ArrayList<>();
      row.add(
          Shown.only(
              order.order().words() + (order.order() == answer.order() ? " (this plan)" : "")));
      for (int c = 0; c < answer.checks().size(); c++) {
        row.add(Shown.only(words.off(answer.checks().get(c).check(), order.expectedMm().get(c))));
      }
      row.add(Shown.only(ShapeWords.worst(order.worst())));
      row.add(Shown.only(Math.round(order.handlingMin()) + " min"));
      rows.add(row);
    }
    return new Table(heads, rows);
  }

  private List<String> slender() {
    List<String> sentences = new ArrayList<>();
    for (Slender thin : answer.slender()) {
      sentences.add(words.slender(thin));
    }
    return sentences;
  }

  /** Everything that is said of one check, in sentences. */
  List<String> check(CheckAnswer check) {
    if (check.verdict() == Verdict.UNTOLD) {
      return List.of("Can't be told: " + check.untold() + ".");
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Expect "
            + words.band(check.check(), check.released())
            + ", tolerance "
            + words.fine(check.toleranceMm())
            + ": "
            + check.verdict().words()
            + ".");
    sentences.add("With fixtures on: " + words.band(check.check(), check.held()) + ".");
    sentences.add("Moved by: " + words.shares(check) + ".");
    List<String> presets = words.presets(check);
    if (!presets.isEmpty()) {
      sentences.add(
          "Set off before tacking: "
              + String.join("; ", presets)
              + ". That leaves "
              + words.band(check.check(), check.withPresets())
              + ".");
    }
    if (check.verdict() != Verdict.YES) {
      for (String remedy : words.remedies(check)) {
        sentences.add("Would help: " + remedy + ".");
      }
    }
    return sentences;
  }
}
