package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.drawing.LabelPlacement.Stroke;
import org.counterpull.drawing.LabelPlacement.Wanted;

/** The parts of a weldment from one side, fitted to a sheet, with a heading and the axes. */
final class View {
  private static final double STEP_PX = 1.5;
  private static final double HEAD_PX = 26;
  private static final double ROUNDING_PX = 0.35;
  private static final String EDGE_COLOUR = "#6b6b6b";

  private final Camera camera;
  private final List<PartShape> shapes;
  private final Sight sight;
  private final double width;
  private final double height;
  private final double scale;
  private final Point shift;

  /**
   * Fits the parts to a sheet.
   *
   * @param labels how many labels must find room
   */
  View(Camera camera, List<PartShape> shapes, double widthPx, int labels) {
    this.camera = camera;
    this.shapes = shapes;
    sight = new Sight(camera, shapes);
    width = widthPx;
    double rim = narrow() ? 34 : 56;
    List<Point> corners =
        shapes.stream().flatMap(s -> s.edges().stream()).map(e -> camera.flat(e.from())).toList();
    double left = corners.stream().mapToDouble(Point::x).min().orElse(0);
    double right = corners.stream().mapToDouble(Point::x).max().orElse(1);
    double top = corners.stream().mapToDouble(Point::y).min().orElse(0);
    double bottom = corners.stream().mapToDouble(Point::y).max().orElse(1);
    double most = width * (narrow() ? 1.3 : 0.72);
    scale =
        Math.min((width - 2 * rim) / Math.max(1, right - left), most / Math.max(1, bottom - top));
    double spare = width - 2 * rim - scale * (right - left);
    double needed = scale * (bottom - top) + 2 * rim + HEAD_PX + footPx();
    height = Math.max(needed, narrow() ? footPx() + Math.min(420, 22.0 * labels) : 0);
    double lower = (height - needed) / 2;
    shift = new Point(rim + spare / 2 - scale * left, rim + HEAD_PX + lower - scale * top);
  }

  /** Made for a phone. */
  boolean narrow() {
    return width < 600;
  }

  double scale() {
    return scale;
  }

  /** Width of the sheet in mm of the weldment. */
  double drawnWidthMm() {
    return width / scale;
  }

  Sight sight() {
    return sight;
  }

  Point onSheet(Vector3D p) {
    return camera.flat(p).times(scale).plus(shift);
  }

  Sheet sheet(String title, String description) {
    return new Sheet("weld-map", width, height, title + ", " + camera.words(), description);
  }

  /** Draws the edges that can be seen. */
  List<Stroke> edges(Sheet sheet) {
    List<Stroke> strokes = new ArrayList<>();
    for (PartShape shape : shapes) {
      for (PartShape.Edge edge : shape.edges()) {
        if (sight.drawn(edge)) {
          double length = onSheet(edge.from()).distance(onSheet(edge.to()));
          strokes.addAll(
              pieces(
                  share -> new Vector3D(1 - share, edge.from(), share, edge.to()), length, true));
        }
      }
    }
    strokes.forEach(e -> sheet.line(e.from(), e.to(), EDGE_COLOUR, 1));
    return strokes;
  }

  /**
   * The pieces of a path that can be seen, or those that can't, as straight strokes.
   *
   * @param path a point for each share of the length, 0 to 1
   * @param lengthPx on the sheet, at most
   * @param seen which pieces
   */
  List<Stroke> pieces(DoubleFunction<Vector3D> path, double lengthPx, boolean seen) {
    int steps = Math.max(6, (int) Math.ceil(lengthPx / STEP_PX));
    List<Stroke> pieces = new ArrayList<>();
    Point from = null;
    Point last = null;
    for (int k = 0; k <= steps; k++) {
      Point here = onSheet(path.apply((double) k / steps));
      boolean wanted = sight.seen(path.apply(Math.min(1, (k + 0.5) / steps))) == seen;
      if (from == null) {
        from = wanted && k < steps ? here : null;
      } else if (!wanted || k == steps) {
        pieces.add(new Stroke(from, here));
        from = null;
      } else if (bends(from, last, here)) {
        pieces.add(new Stroke(from, last));
        from = last;
      }
      last = here;
    }
    return pieces;
  }

  /** The pieces of an edge that can be seen before it moves, drawn where it has moved to. */
  List<Stroke> carried(PartShape.Edge edge, UnaryOperator<Vector3D> moved) {
    List<Stroke> pieces = new ArrayList<>();
    if (!sight.drawn(edge)) {
      return pieces;
    }
    double length = onSheet(edge.from()).distance(onSheet(edge.to()));
    int steps = Math.max(6, (int) Math.ceil(length / (4 * STEP_PX)));
    Point last = onSheet(moved.apply(edge.from()));
    for (int k = 1; k <= steps; k++) {
      Point here = onSheet(moved.apply(between(edge, (double) k / steps)));
      if (sight.seen(between(edge, (k - 0.5) / steps))) {
        pieces.add(new Stroke(last, here));
      }
      last = here;
    }
    return pieces;
  }

  private static Vector3D between(PartShape.Edge edge, double share) {
    return new Vector3D(1 - share, edge.from(), share, edge.to());
  }

  private static boolean bends(Point from, Point last, Point here) {
    Point chord = last.minus(from);
    return chord.length() > 0.5 && Math.abs(chord.unit().cross(here.minus(from))) > ROUNDING_PX;
  }

  /** Something to be labelled. */
  Wanted wanted(Point anchor, String text, double size) {
    double halfHeight = size * 0.82;
    double half = Math.max(halfHeight, Sheet.textWidth(text, size) / 2 + 4);
    return new Wanted(anchor, half, halfHeight);
  }

  /** Writes labels in frames beside what they name, with their leaders. */
  void labels(
      Sheet sheet,
      List<Wanted> wanted,
      List<String> texts,
      double size,
      List<Stroke> welds,
      List<Stroke> edges) {
    List<Point> places =
        new LabelPlacement(HEAD_PX, width, height - footPx(), welds, edges).place(wanted);
    for (int i = 0; i < places.size(); i++) {
      sheet.line(wanted.get(i).anchor(), places.get(i), Sheet.INK, 1);
    }
    for (int i = 0; i < places.size(); i++) {
      Wanted w = wanted.get(i);
      Point at = places.get(i);
      Point corner = new Point(at.x() - w.halfWidth(), at.y() - w.halfHeight());
      sheet.box(corner, 2 * w.halfWidth(), 2 * w.halfHeight(), w.halfHeight(), "#fff", Sheet.INK);
      sheet.bold(new Point(at.x(), at.y() + size * 0.36), texts.get(i), size, "middle");
    }
  }

  void heading(Sheet sheet, String what) {
    sheet.bold(new Point(4, 17), what + camera.words(), narrow() ? 14 : 16, "start");
  }

  /** Lines of small text beside the axes, the last one lowest. */
  void foot(Sheet sheet, List<String> lines) {
    double size = narrow() ? 12 : 14;
    for (int i = 0; i < lines.size(); i++) {
      double above = (lines.size() - 1 - i) * size * 1.3;
      sheet.text(new Point(4, height - 6 - above), lines.get(i), size, "start", Sheet.INK);
    }
  }

  /** Height of the strip at the bottom that belongs to the axes. */
  private double footPx() {
    return 2 * compassArm();
  }

  private double compassArm() {
    return narrow() ? 20 : 26;
  }

  private Point compassMiddle() {
    return new Point(width - compassArm() - 54, height - compassArm() * 1.25);
  }

  private Point compassTip(Vector3D axis) {
    return compassMiddle().plus(camera.flat(axis).times(compassArm()));
  }

  private static List<Vector3D> axes() {
    return List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);
  }

  /** Which way is right, back and up. */
  void compass(Sheet sheet) {
    List<String> words = List.of("right", "back", "up");
    Point middle = compassMiddle();
    for (int i = 0; i < words.size(); i++) {
      Point tip = compassTip(axes().get(i));
      sheet.line(middle, tip, Sheet.INK, 1.2);
      sheet.arrowHead(tip, tip.minus(middle), 6, Sheet.INK);
      Point word = tip.plus(tip.minus(middle).unit().times(9));
      double aside = word.x() - middle.x();
      String anchor = Math.abs(aside) < 8 ? "middle" : aside > 0 ? "start" : "end";
      sheet.text(
          new Point(word.x(), word.y() + 4), words.get(i), narrow() ? 12 : 13, anchor, Sheet.INK);
    }
  }
}
