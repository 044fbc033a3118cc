package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.drawing.LabelPlacement.Stroke;
import org.counterpull.drawing.LabelPlacement.Wanted;
import org.counterpull.markup.Markup;

/** One view of the weld map. */
final class WeldView {
  private static final double STEP_PX = 1.5;
  private static final double HEAD_PX = 26;
  private static final String EDGE_COLOUR = "#6b6b6b";

  private final WeldMap map;
  private final Camera camera;
  private final List<Integer> numbered;
  private final Sight sight;
  private final double width;
  private final double height;
  private final double scale;
  private final double rim;
  private final Point shift;
  private final boolean narrow;

  WeldView(WeldMap map, Camera camera, List<Integer> numbered, double widthPx) {
    this.map = map;
    this.camera = camera;
    this.numbered = numbered;
    this.sight = new Sight(camera, map.shapes());
    width = widthPx;
    narrow = widthPx < 600;
    rim = narrow ? 34 : 56;
    List<Point> corners =
        map.shapes().stream()
            .flatMap(s -> s.edges().stream())
            .map(e -> camera.flat(e.from()))
            .toList();
    double left = corners.stream().mapToDouble(Point::x).min().orElse(0);
    double right = corners.stream().mapToDouble(Point::x).max().orElse(1);
    double top = corners.stream().mapToDouble(Point::y).min().orElse(0);
    double bottom = corners.stream().mapToDouble(Point::y).max().orElse(1);
    double most = width * (narrow ? 1.3 : 0.72);
    scale =
        Math.min((width - 2 * rim) / Math.max(1, right - left), most / Math.max(1, bottom - top));
    double spare = width - 2 * rim - scale * (right - left);
    shift = new Point(rim + spare / 2 - scale * left, rim + HEAD_PX - scale * top);
    double roomForNumbers = narrow ? 24.0 * numbered.size() : 0;
    height =
        Math.max(scale * (bottom - top) + 2 * rim + HEAD_PX + 22, Math.min(420, roomForNumbers));
  }

  Markup draw() {
    Sheet sheet =
        new Sheet("weld-map", width, height, map.title() + ", " + camera.words(), description());
    List<Stroke> edges = edges();
    edges.forEach(e -> sheet.line(e.from(), e.to(), EDGE_COLOUR, 1));
    for (int run = 0; run < map.runs(); run++) {
      if (!numbered.contains(run)) {
        visible(run, true).forEach(s -> sheet.line(s.from(), s.to(), "#b0b0b0", 2.2));
      }
    }
    List<Stroke> welds = new ArrayList<>();
    numbered.forEach(run -> welds.addAll(weld(sheet, run)));
    numbers(sheet, welds, edges);
    sheet.bold(new Point(4, 17), "Seen " + camera.words(), narrow ? 14 : 16, "start");
    compass(sheet);
    return sheet.done();
  }

  private String description() {
    return "Runs on this view: "
        + numbered.stream()
            .map(run -> "W" + (run + 1) + " " + map.line(run).run())
            .collect(Collectors.joining(", "))
        + ". A dot marks the start of a run, an arrow its direction.";
  }

  private Point onSheet(Vector3D p) {
    return camera.flat(p).times(scale).plus(shift);
  }

  private List<Stroke> edges() {
    List<Stroke> strokes = new ArrayList<>();
    for (PartShape shape : map.shapes()) {
      for (PartShape.Edge edge : shape.edges()) {
        if (sight.drawn(edge)) {
          double length = onSheet(edge.from()).distance(onSheet(edge.to()));
          strokes.addAll(
              pieces(
                  share -> new Vector3D(1 - share, edge.from(), share, edge.to()), length, true));
        }
      }
    }
    return strokes;
  }

  /** The pieces of a run that can be seen, or those that can't. */
  private List<Stroke> visible(int run, boolean seen) {
    double length = map.line(run).path().lengthMm() * scale;
    return pieces(share -> map.point(run, share), length, seen);
  }

  private List<Stroke> pieces(DoubleFunction<Vector3D> path, double lengthPx, boolean seen) {
    int steps = Math.max(6, (int) Math.ceil(lengthPx / STEP_PX));
    List<Stroke> pieces = new ArrayList<>();
    Point from = null;
    Point last = null;
    Point direction = null;
    for (int k = 0; k <= steps; k++) {
      Point here = onSheet(path.apply((double) k / steps));
      boolean wanted = sight.seen(path.apply(Math.min(1, (k + 0.5) / steps))) == seen;
      if (from == null) {
        from = wanted && k < steps ? here : null;
      } else if (!wanted || k == steps) {
        pieces.add(new Stroke(from, here));
        from = null;
      } else if (direction != null && bends(from, last, here)) {
        pieces.add(new Stroke(from, last));
        from = last;
      }
      direction = last == null ? null : here.minus(last);
      last = here;
    }
    return pieces;
  }

  private static boolean bends(Point from, Point last, Point here) {
    Point chord = last.minus(from);
    return chord.length() > 0.5 && Math.abs(chord.unit().cross(here.minus(from))) > 0.35;
  }

  private List<Stroke> weld(Sheet sheet, int run) {
    List<Stroke> strokes = new ArrayList<>(visible(run, true));
    List<Stroke> hidden = visible(run, false);
    hidden.forEach(s -> sheet.line(s.from(), s.to(), Sheet.INK, 2, "3 5"));
    strokes.forEach(s -> sheet.line(s.from(), s.to(), Sheet.INK, 3.4));
    Point start = onSheet(map.point(run, 0));
    Point end = onSheet(map.point(run, 1));
    Point before = onSheet(map.point(run, 0.9));
    sheet.arrowHead(end, end.minus(before), narrow ? 8 : 11, Sheet.INK);
    sheet.circle(start, narrow ? 3.4 : 4.2, Sheet.INK, "#fff", 1);
    strokes.addAll(hidden);
    return strokes;
  }

  private void numbers(Sheet sheet, List<Stroke> welds, List<Stroke> edges) {
    double size = narrow ? 13 : 15;
    List<Wanted> wanted = new ArrayList<>();
    for (int run : numbered) {
      double half = Math.max(size * 0.82, Sheet.textWidth(name(run), size) / 2 + 4);
      wanted.add(new Wanted(anchor(run), half, size * 0.82));
    }
    List<Point> places = new LabelPlacement(width, height - 4, welds, edges).place(wanted);
    for (int i = 0; i < places.size(); i++) {
      sheet.line(wanted.get(i).anchor(), places.get(i), Sheet.INK, 1);
    }
    for (int i = 0; i < places.size(); i++) {
      Wanted w = wanted.get(i);
      Point at = places.get(i);
      sheet.box(
          new Point(at.x() - w.halfWidth(), at.y() - w.halfHeight()),
          2 * w.halfWidth(),
          2 * w.halfHeight(),
          w.halfHeight(),
          "#fff",
          Sheet.INK);
      sheet.bold(new Point(at.x(), at.y() + size * 0.36), name(numbered.get(i)), size, "middle");
    }
  }

  private static String name(int run) {
    return "W" + (run + 1);
  }

  /** The middle of what can be seen of a run, away from its dot and its arrow. */
  private Point anchor(int run) {
    double best = 0.45;
    double farthest = Double.POSITIVE_INFINITY;
    for (int k = 1; k < 20; k++) {
      double share = k / 20.0;
      if (sight.seen(map.point(run, share)) && Math.abs(share - 0.45) < farthest) {
        farthest = Math.abs(share - 0.45);
        best = share;
      }
    }
    return onSheet(map.point(run, best));
  }

  /** Which way is right, back and up. */
  private void compass(Sheet sheet) {
    double arm = narrow ? 20 : 26;
    Point middle = new Point(width - arm * 2.3, height - arm * 1.5);
    String[] words = {"right", "back", "up"};
    Vector3D[] axes = {Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K};
    for (int i = 0; i < axes.length; i++) {
      Point tip = middle.plus(camera.flat(axes[i]).times(arm));
      sheet.line(middle, tip, Sheet.INK, 1.2);
      sheet.arrowHead(tip, tip.minus(middle), 6, Sheet.INK);
      Point word = tip.plus(tip.minus(middle).unit().times(9));
      String anchor =
          Math.abs(word.x() - middle.x()) < 8 ? "middle" : word.x() > middle.x() ? "start" : "end";
      sheet.text(new Point(word.x(), word.y() + 4), words[i], narrow ? 11 : 12, anchor, Sheet.INK);
    }
  }
}
