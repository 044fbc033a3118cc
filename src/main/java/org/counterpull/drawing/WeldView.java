package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.counterpull.drawing.LabelPlacement.Stroke;
import org.counterpull.drawing.LabelPlacement.Wanted;
import org.counterpull.markup.Markup;

/** One view of the weld map. */
final class WeldView {
  private static final double ANCHOR_SHARE = 0.45;
  private static final String ELSEWHERE_COLOUR = "#b0b0b0";

  private final WeldMap map;
  private final List<Integer> numbered;
  private final View view;

  /**
   * A view.
   *
   * @param numbered the runs that get their numbers here
   */
  WeldView(WeldMap map, Camera camera, List<Integer> numbered, double widthPx) {
    this.map = map;
    this.numbered = numbered;
    view = new View(camera, map.shapes(), widthPx, numbered.size());
  }

  Markup draw() {
    Sheet sheet = view.sheet(map.title(), description());
    List<Stroke> edges = view.edges(sheet);
    for (int run = 0; run < map.runs(); run++) {
      if (!numbered.contains(run)) {
        pieces(run, true).forEach(s -> sheet.line(s.from(), s.to(), ELSEWHERE_COLOUR, 2.2));
      }
    }
    List<Stroke> welds = new ArrayList<>();
    numbered.forEach(run -> welds.addAll(weld(sheet, run)));
    double size = view.narrow() ? 13 : 15;
    List<Wanted> wanted =
        numbered.stream().map(r -> view.wanted(anchor(r), name(r), size)).toList();
    view.labels(sheet, wanted, numbered.stream().map(WeldView::name).toList(), size, welds, edges);
    view.heading(sheet, "Seen ");
    view.compass(sheet);
    return sheet.done();
  }

  private String description() {
    return "Runs on this view: "
        + numbered.stream()
            .map(run -> name(run) + " " + map.line(run).run())
            .collect(Collectors.joining(", "))
        + ". A dot marks the start of a run, an arrow its direction.";
  }

  private static String name(int run) {
    return "W" + (run + 1);
  }

  private List<Stroke> pieces(int run, boolean seen) {
    double length = map.line(run).path().lengthMm() * view.scale();
    return view.pieces(share -> map.point(run, share), length, seen);
  }

  private List<Stroke> weld(Sheet sheet, int run) {
    List<Stroke> strokes = new ArrayList<>(pieces(run, true));
    List<Stroke> hidden = pieces(run, false);
    hidden.forEach(s -> sheet.line(s.from(), s.to(), Sheet.INK, 2, "3 5"));
    strokes.forEach(s -> sheet.line(s.from(), s.to(), Sheet.INK, 3.4));
    Point end = view.onSheet(map.point(run, 1));
    Point before = view.onSheet(map.point(run, 0.9));
    sheet.arrowHead(end, end.minus(before), view.narrow() ? 8 : 11, Sheet.INK);
    Point start = view.onSheet(map.point(run, 0));
    sheet.circle(start, view.narrow() ? 3.4 : 4.2, Sheet.INK, "#fff", 1);
    strokes.addAll(hidden);
    return strokes;
  }

  /** The middle of what can be seen of a run, away from its dot and its arrow. */
  private Point anchor(int run) {
    double best = ANCHOR_SHARE;
    double farthest = Double.POSITIVE_INFINITY;
    for (int k = 1; k < 20; k++) {
      double share = k / 20.0;
      double away = Math.abs(share - ANCHOR_SHARE);
      if (away < farthest && view.sight().seen(map.point(run, share))) {
        farthest = away;
        best = share;
      }
    }
    return view.onSheet(map.point(run, best));
  }
}
