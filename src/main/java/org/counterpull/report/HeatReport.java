package org.counterpull.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.counterpull.drawing.HeatChart;
import org.counterpull.heat.solve.EnergyBalance;
import org.counterpull.heatjob.HeatAnswer;
import org.counterpull.heatjob.HeatAnswer.Start;
import org.counterpull.heatjob.HeatAnswer.Trace;
import org.counterpull.quantity.Printed;

/** What the heat of a job is told in: a table of temperatures, JSON, a drawing, a summary. */
public final class HeatReport {
  private static final int DIGITS = 6;
  private static final int MOST_ROWS = 4000;
  private static final ObjectMapper MAPPER =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private final HeatAnswer answer;

  public HeatReport(HeatAnswer answer) {
    this.answer = answer;
  }

  /** Texts by file name. */
  public Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("temps.csv", csv());
    files.put("heat.json", json());
    files.put("heat.svg", HeatChart.of(answer, 960).toString());
    return files;
  }

  /** Temperatures over time, one column each. */
  public String csv() {
    StringBuilder text = new StringBuilder("time_s");
    for (Trace trace : answer.traces()) {
      String kind = trace.kind() == HeatAnswer.Kind.RUN_START ? "start of " : "";
      text.append(',').append(quoted(kind + trace.name() + "_C"));
    }
    text.append('\n');
    for (double timeS : times()) {
      text.append(Printed.number(timeS, DIGITS));
      for (Trace trace : answer.traces()) {
        text.append(',').append(Printed.number(trace.history().atC(timeS), DIGITS));
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static String quoted(String cell) {
    return cell.contains(",") || cell.contains("\"")
        ? '"' + cell.replace("\"", "\"\"") + '"'
        : cell;
  }

  /** Every time that was noted; thinned where there are very many, but peaks and end stay. */
  private List<Double> times() {
    TreeSet<Double> all = new TreeSet<>();
    TreeSet<Double> kept = new TreeSet<>();
    for (Trace trace : answer.traces()) {
      double hottestS = 0;
      for (double timeS : trace.history().timesS()) {
        all.add(timeS);
        boolean hotter = trace.history().atC(timeS) > trace.history().atC(hottestS);
        hottestS = hotter ? timeS : hottestS;
      }
      kept.add(hottestS);
    }
    int every = Math.max(1, all.size() / MOST_ROWS + 1);
    int n = 0;
    for (double timeS : all) {
      if (n++ % every == 0) {
        kept.add(timeS);
      }
    }
    if (!all.isEmpty()) {
      kept.add(all.last());
    }
    return List.copyOf(kept);
  }

  /** Everything but the histories. */
  public String json() {
    ObjectNode node = MAPPER.createObjectNode();
    node.put("weldment", answer.weldment());
    node.put("order", answer.order());
    node.put("resolution", answer.resolution().word());
    put(node, "ambientC", answer.ambientC());
    put(node, "endS", answer.endS());
    node.put("cells", answer.cells());
    node.put("steps", answer.steps());
    ArrayNode places = node.putArray("places");
    answer.traces().forEach(trace -> place(places.addObject(), trace));
    ArrayNode starts = node.putArray("starts");
    answer.starts().forEach(start -> start(starts.addObject(), start));
    EnergyBalance balance = answer.balance();
    ObjectNode energy = node.putObject("balance");
    put(energy, "askedJ", balance.askedJ());
    put(energy, "inJ", balance.inJ());
    put(energy, "storedJ", balance.storedJ());
    put(energy, "lostToAirJ", balance.toAirJ());
    put(energy, "lostToBodiesJ", balance.toBodiesJ());
    put(energy, "imbalance", balance.imbalance());
    answer.notes().forEach(node.putArray("notes")::add);
    try {
      return MAPPER.writeValueAsString(node) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a JSON tree could not be written", e);
    }
  }

  private static void place(ObjectNode node, Trace trace) {
    node.put("name", trace.name()).put("kind", trace.kind().words());
    put(node, "peakC", trace.history().peakC());
    put(node, "peakS", trace.history().peakTimeS());
    put(node, "endC", trace.history().endC());
    trace
        .limitC()
        .ifPresent(
            limit -> {
              put(node, "limitC", limit);
              put(node, "aboveLimitS", trace.history().timeAboveS(limit));
            });
  }

  private static void start(ObjectNode node, Start start) {
    node.put("run", start.run()).put("pass", start.pass());
    put(node, "startS", start.startS());
    put(node, "hottestC", start.hottestC());
    put(node, "coolestC", start.coolestC());
    start.preheatC().ifPresent(c -> put(node, "preheatC", c));
    start.interpassMaxC().ifPresent(c -> put(node, "interpassMaxC", c));
  }

  private static void put(ObjectNode node, String key, double value) {
    node.set(key, JsonValues.number(value));
  }

  /** For the terminal. */
  public String summary() {
    StringBuilder text = new StringBuilder();
    line(
        text,
        "%s, %s order, %s: %d cells, %d steps, %s of simulated time",
        answer.weldment(),
        answer.order().equals("plan") ? "planned" : "written",
        answer.resolution().word(),
        answer.cells(),
        answer.steps(),
        time(answer.endS()));
    line(text, "%n%-34s %9s %10s %9s", "peaks", "peak", "when", "at end");
    for (Trace trace : answer.traces()) {
      if (trace.kind() != HeatAnswer.Kind.RUN_START) {
        line(
            text,
            "  %-32s %7.1f C %8.1f s %7.1f C%s",
            trace.name(),
            trace.history().peakC(),
            trace.history().peakTimeS(),
            trace.history().endC(),
            limit(trace));
      }
    }
    line(text, "%n%-34s %9s %10s %9s", "metal when a run begins", "hottest", "when", "coolest");
    for (Start start : answer.starts()) {
      line(
          text,
          "  %-32s %7.1f C %8.1f s %7.1f C%s",
          start.run() + (start.pass() > 1 ? ", pass " + start.pass() : ""),
          start.hottestC(),
          start.startS(),
          start.coolestC(),
          verdict(start));
    }
    EnergyBalance balance = answer.balance();
    line(
        text,
        "%nheat: in %.2f kJ, stored %.2f kJ, lost %.2f kJ; out of balance by %.1e",
        balance.inJ() / 1e3,
        balance.storedJ() / 1e3,
        balance.lostJ() / 1e3,
        balance.imbalance());
    answer.notes().forEach(note -> line(text, "%s", note));
    return text.toString();
  }

  private static String limit(Trace trace) {
    if (trace.limitC().isEmpty()) {
      return "";
    }
    double limit = trace.limitC().get();
    return trace.overLimit()
        ? String.format(
            Locale.ROOT,
            "  over its limit of %.0f C for %s",
            limit,
            time(trace.history().timeAboveS(limit)))
        : String.format(Locale.ROOT, "  limit %.0f C", limit);
  }

  private static String verdict(Start start) {
    if (start.tooWarm()) {
      return String.format(
          Locale.ROOT, "  too warm: at most %.0f C", start.interpassMaxC().orElseThrow());
    }
    return start.tooCold()
        ? String.format(
            Locale.ROOT,
            "  preheat to %.0f C with a flame, which is left out here",
            start.preheatC().orElseThrow())
        : "";
  }

  private static String time(double seconds) {
    return seconds < 600
        ? String.format(Locale.ROOT, "%.0f s", seconds)
        : String.format(Locale.ROOT, "%.0f min", seconds / 60);
  }

  private static void line(StringBuilder text, String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
