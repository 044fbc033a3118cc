package org.counterpull.report;

import static org.counterpull.report.Table.row;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.counterpull.plan.CutList;

/** The cutting list and the bars that it comes from. */
final class CutTables {
  private final CutList list;
  private final Measures measures;

  CutTables(CutList list, Measures measures) {
    this.list = list;
    this.measures = measures;
  }

  /** Equal pieces together; how the length comes about stands apart. */
  Table cuts() {
    List<List<Shown>> rows = new ArrayList<>();
    for (CutList.Cut cut : list.cuts()) {
      rows.add(
          row(
              measures.sentences().of(cut.parts().size() + " x " + cut.stock()),
              cut.steel(),
              String.join(", ", cut.parts()),
              measures.length(cut.drawnMm()),
              cut.gapMm() == 0 ? "\u2013" : "less " + mm(cut.gapMm()),
              cut.shrinkageMm() == 0 ? "\u2013" : "plus " + mm(cut.shrinkageMm()),
              measures.length(Math.round(10 * cut.cutMm()) / 10.0),
              measures.mass(cut.kg())));
    }
    return new Table(
        List.of(
            "cut", "steel", "parts", "drawn", "root gaps", "shrinkage", "cut to", "mass of one"),
        rows);
  }

  /** What is bought and how each bar is cut. */
  Table bars() {
    List<List<Shown>> rows = new ArrayList<>();
    for (CutList.Bars bars : list.bars()) {
      Map<String, Integer> patterns = new LinkedHashMap<>();
      for (int i = 0; i < bars.lengthsMm().size(); i++) {
        patterns.merge(pattern(bars, i), 1, Integer::sum);
      }
      List<String> words = new ArrayList<>();
      patterns.forEach((pattern, count) -> words.add(count + " x (" + pattern + ")"));
      bars.tooLongMm().forEach(piece -> words.add("order " + mm(piece) + " to length"));
      rows.add(
          row(
              measures.sentences().of(bars.lengthsMm().size() + " x " + bars.stock()),
              bars.steel(),
              measures.length(bars.barMm()),
              String.join("; ", words),
              bars.leastPossible() ? "fewest possible" : "fewest found",
              measures.mass(bars.kg())));
    }
    return new Table(
        List.of("bars", "steel", "of", "cut from each", "number", "mass bought"), rows);
  }

  private String pattern(CutList.Bars bars, int bar) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    bars.lengthsMm().get(bar).forEach(piece -> counts.merge(mm(piece), 1, Integer::sum));
    String pieces =
        counts.entrySet().stream()
            .map(e -> e.getValue() == 1 ? e.getKey() : e.getValue() + " x " + e.getKey())
            .collect(Collectors.joining(" + "));
    return pieces + ", rest " + mm(bars.restMm(bar));
  }

  private String mm(double lengthMm) {
    return measures.length(lengthMm).first();
  }
}
