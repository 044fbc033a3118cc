package org.counterpull.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.counterpull.drawing.ShapeDrawing;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Compared;
import org.counterpull.plan.PullAnswer.Search;
import org.counterpull.plan.PullAnswer.Slender;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.quantity.LengthUnit;

/** What welding does to a shape, as a summary, JSON and a drawing. */
public final class PullReport {
  private static final int COLUMNS = 100;
  private static final double DRAWING_PX = 960;
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final PullAnswer answer;
  private final ShapeWords words;
  private final StringBuilder text = new StringBuilder();

  /** A report; the file's units come first in words. */
  public PullReport(PullAnswer answer, LengthUnit fileUnits) {
    this.answer = answer;
    this.words = new ShapeWords(new Measures(fileUnits));
  }

  /** Texts by file name. */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("pull.json", json());
    files.put("shape.svg", ShapeDrawing.of(answer, DRAWING_PX, words::expected).toString());
    return files;
  }

  /** True when a check is expected out of tolerance in this order. */
  public boolean outOfTolerance() {
    return answer.checks().stream().anyMatch(check -> check.verdict() == Verdict.NO);
  }

  /** For the terminal, lines of at most 100 columns where names allow it. */
  public String summary() {
    text.setLength(0);
    line(answer.weldment().name() + ", " + answer.order().words() + found());
    slender();
    line("");
    line("checks: expected (nine of ten between these), fixtures off");
    answer.checks().forEach(this::check);
    if (answer.orders().size() > 1) {
      compared();
    }
    line("");
    line("why this order");
    new OrderWords(answer).sentences().forEach(why -> wrapped("  ", why));
    line("");
    line("order of welding");
    wrapped(
        "  ",
        answer.sequence().stream()
            .map(turn -> turn.run() + (turn.reversed() ? " (from its end)" : ""))
            .collect(Collectors.joining(", ")));
    line("");
    answer.notes().forEach(note -> wrapped("", note));
    long beyond = answer.runs().stream().filter(run -> !run.beyond().isEmpty()).count();
    if (beyond > 0) {
      wrapped(
          "",
          beyond
              + " of "
              + answer.runs().size()
              + " runs are short, narrow or hot for the closed forms; pull.json says which and"
              + " how.");
    }
    return text.toString();
  }

  private String found() {
    if (answer.search().isEmpty()) {
      return "";
    }
    Search search = answer.search().get();
    String how =
        search.proved()
            ? "proved: every order that the rules allow was looked at"
            : search.evaluations() + " orders looked at, seed " + search.seed();
    return " (" + how + (search.interrupted() ? ", stopped early" : "") + ")";
  }

  private void slender() {
    for (Slender thin : answer.slender()) {
      wrapped("  ", words.slender(thin));
    }
    if (answer.slender().isEmpty()) {
      line("  no plate is thin and wide enough to buckle");
    }
  }

  private void check(CheckAnswer check) {
    wrapped("  ", words.verdict(check));
    if (check.verdict() == Verdict.UNTOLD) {
      return;
    }
    line("      with fixtures on " + words.band(check.check(), check.held()));
    wrapped("      ", "moved by " + words.shares(check));
    List<String> presets = words.presets(check);
    if (!presets.isEmpty()) {
      wrapped("      ", "set off before tacking: " + String.join("; ", presets));
      line("      that leaves " + words.band(check.check(), check.withPresets()));
    }
    if (check.verdict() != Verdict.YES) {
      words.remedies(check).forEach(remedy -> wrapped("      ", "would help: " + remedy));
    }
  }

  private void compared() {
    line("");
    int wide = answer.checks().stream().mapToInt(c -> c.check().name().length()).max().orElse(10);
    wide = Math.max(wide, "worst check / tolerance".length());
    StringBuilder head = new StringBuilder(pad("orders compared", wide + 2));
    answer.orders().forEach(order -> head.append(pad(order.order().word(), 16)));
    line(head.toString().stripTrailing());
    for (int c = 0; c < answer.checks().size(); c++) {
      StringBuilder row =
          new StringBuilder("  " + pad(answer.checks().get(c).check().name(), wide));
      for (Compared order : answer.orders()) {
        row.append(pad(words.off(answer.checks().get(c).check(), order.expectedMm().get(c)), 16));
      }
      line(row.toString().stripTrailing());
    }
    StringBuilder worst = new StringBuilder("  " + pad("worst check / tolerance", wide));
    StringBuilder time = new StringBuilder("  " + pad("turning and moving", wide));
    for (Compared order : answer.orders()) {
      worst.append(pad(ShapeWords.worst(order.worst()), 16));
      time.append(pad(Math.round(order.handlingMin()) + " min", 16));
    }
    line(worst.toString().stripTrailing());
    line(time.toString().stripTrailing());
  }

  private static String pad(String word, int width) {
    return word + " ".repeat(Math.max(1, width - word.length()));
  }

  private void line(String one) {
    text.append(one).append('\n');
  }

  private void wrapped(String indent, String long1) {
    StringBuilder line = new StringBuilder();
    for (String word : long1.split(" ")) {
      if (line.length() > 0 && indent.length() + line.length() + 1 + word.length() > COLUMNS) {
        line(indent + line);
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    line(indent + line);
  }

  /** Everything in numbers. */
  public String json() {
    try {
      return MAPPER.writeValueAsString(PullJson.tree(answer)) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a JSON tree could not be written", e);
    }
  }
}
