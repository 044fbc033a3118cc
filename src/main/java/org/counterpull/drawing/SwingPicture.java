package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import org.counterpull.markup.Markup;
import org.counterpull.solid.Section;
import org.counterpull.solid.Solid;
import org.counterpull.swing.SwingResult;
import org.counterpull.swing.Turning;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;

/**
 * A swing seen along its hinge axis: what stands still in grey, what turns at the start, half way,
 * at the end and where it first clashes; with a cylinder its line at each.
 */
public final class SwingPicture {
  private static final double MARGIN = 34;
  private static final double TEXT = 14;
  private static final double LEGEND = 24;
  private static final double TALLEST = 620;

  /** Sine up to which a round part counts as lying along the axis. */
  private static final double ALONG = 1e-3;

  private static final String START = "#111";
  private static final String MIDDLE = "#767676";
  private static final String END = "#00507a";
  private static final String CLASH = "#b00020";

  private final Weldment weldment;
  private final SwingResult result;
  private final Turning turning;
  private final double width;
  private final List<Layer> layers = new ArrayList<>();
  private double lowU = Double.MAX_VALUE;
  private double highU = -Double.MAX_VALUE;
  private double lowV = Double.MAX_VALUE;
  private double highV = -Double.MAX_VALUE;
  private double scale;

  private record Layer(double deg, String colour, String dashes, double stroke, String words) {}

  private SwingPicture(Weldment weldment, SwingResult result, double widthPx) {
    this.weldment = weldment;
    this.result = result;
    this.turning = Turning.about(weldment.part(result.swing().about()));
    this.width = widthPx;
    double from = result.swing().fromDeg();
    double to = result.swing().toDeg();
    layers.add(new Layer((from + to) / 2, MIDDLE, "4 4", 1, "half way, " + deg((from + to) / 2)));
    layers.add(new Layer(to, END, "9 4", 1.6, "end, " + deg(to)));
    layers.add(new Layer(from, START, "", 1.8, "start, " + deg(from)));
    result
        .clash()
        .ifPresent(
            c ->
                layers.add(
                    new Layer(
                        c.angleDeg(),
                        CLASH,
                        "",
                        1.8,
                        "clash, "
                            + deg(c.angleDeg())
                            + ": "
                            + c.movingPart()
                            + " meets "
                            + c.standingPart())));
    measure();
  }

  /** The drawing. */
  public static Markup of(Weldment weldment, SwingResult result, double widthPx) {
    return new SwingPicture(weldment, result, widthPx).draw();
  }

  private static String deg(double deg) {
    return String.format(Locale.ROOT, "%.1f degrees", deg).replace(".0 ", " ");
  }

  private void measure() {
    for (Part part : weldment.parts()) {
      Solid solid = Solid.of(part);
      if (result.moving().contains(part.name())) {
        layers.forEach(layer -> widen(turning.solid(solid, layer.deg())));
      } else {
        widen(solid);
      }
    }
    result
        .swing()
        .cylinder()
        .ifPresent(
            c -> {
              widen(c.fixedAt());
              layers.forEach(layer -> widen(turning.point(c.movingAt(), layer.deg())));
            });
    double across = (width - 2 * MARGIN) / Math.max(1, highU - lowU);
    scale = Math.min(across, TALLEST / Math.max(1, highV - lowV));
  }

  private void widen(Solid solid) {
    solid.pieceCorners().forEach(corners -> corners.forEach(this::widen));
  }

  private void widen(Vector3D point) {
    lowU = Math.min(lowU, turning.uOf(point));
    highU = Math.max(highU, turning.uOf(point));
    lowV = Math.min(lowV, turning.vOf(point));
    highV = Math.max(highV, turning.vOf(point));
  }

  private Point at(Vector3D point) {
    return at(turning.uOf(point), turning.vOf(point));
  }

  private Point at(double u, double v) {
    double left = (width - scale * (highU - lowU)) / 2;
    return new Point(left + scale * (u - lowU), MARGIN + scale * (highV - v));
  }

  private Markup draw() {
    double bottom = 2 * MARGIN + scale * (highV - lowV);
    Sheet sheet =
        new Sheet(
            "swing",
            width,
            bottom + LEGEND * (layers.size() + 1),
            "Swing of " + result.swing().name(),
            "Seen along the hinge axis: "
                + String.join("; ", layers.stream().map(Layer::words).toList()));
    for (Part part : weldment.parts()) {
      if (!result.moving().contains(part.name())) {
        outline(sheet, Solid.of(part), "#dcdcdc", MIDDLE, 1, "");
      }
    }
    for (Layer layer : layers) {
      for (String name : result.moving()) {
        Solid solid = turning.solid(Solid.of(weldment.part(name)), layer.deg());
        outline(sheet, solid, "none", layer.colour(), layer.stroke(), layer.dashes());
      }
      result.swing().cylinder().ifPresent(c -> cylinder(sheet, c, layer));
    }
    Point axis = at(0, 0);
    sheet.circle(axis, 6, "#fff", CLASH, 2);
    sheet.circle(axis, 1.5, CLASH, CLASH, 1);
    legend(sheet, bottom);
    return sheet.done();
  }

  private void cylinder(Sheet sheet, Swing.Cylinder cylinder, Layer layer) {
    Point foot = at(cylinder.fixedAt());
    Point head = at(turning.point(cylinder.movingAt(), layer.deg()));
    sheet.line(foot, head, layer.colour(), layer.stroke() + 1.5, layer.dashes());
    sheet.circle(foot, 4, "#fff", START, 1.6);
    sheet.circle(head, 4, "#fff", layer.colour(), 1.6);
  }

  private void outline(
      Sheet sheet, Solid solid, String fill, String colour, double stroke, String dashes) {
    if (solid.section() instanceof Section.Round round
        && solid.sweep().z().crossProduct(turning.axis()).getNorm() < ALONG) {
      Point middle = at(solid.middle());
      sheet.circle(middle, scale * round.radiusMm(), fill, colour, stroke);
      sheet.circle(middle, scale * round.boreMm(), "none", colour, stroke);
      return;
    }
    for (List<Vector3D> piece : solid.pieceCorners()) {
      List<Point> corners = hull(piece).stream().map(c -> at(c.getX(), c.getY())).toList();
      if (!fill.equals("none")) {
        sheet.polygon(corners, fill, colour, stroke);
      } else if (corners.size() > 1) {
        List<Point> closed = new ArrayList<>(corners);
        closed.add(corners.get(0));
        sheet.polyline(closed, colour, stroke, dashes);
      }
    }
  }

  private List<Vector2D> hull(List<Vector3D> corners) {
    List<Vector2D> flat =
        corners.stream().map(c -> new Vector2D(turning.uOf(c), turning.vOf(c))).toList();
    Vector2D[] vertices = new MonotoneChain().generate(flat).getVertices();
    return List.of(vertices);
  }

  private void legend(Sheet sheet, double top) {
    List<Layer> byAngle = new ArrayList<>(layers);
    byAngle.sort(Comparator.comparingDouble(l -> Math.abs(l.deg() - result.swing().fromDeg())));
    for (int i = 0; i < byAngle.size(); i++) {
      Layer layer = byAngle.get(i);
      double y = top + LEGEND * i;
      sheet.line(
          new Point(MARGIN, y), new Point(MARGIN + 40, y), layer.colour(), 2.4, layer.dashes());
      sheet.text(new Point(MARGIN + 50, y + 5), layer.words(), TEXT, "start", Sheet.INK);
    }
    double y = top + LEGEND * layers.size();
    sheet.circle(new Point(MARGIN + 20, y), 6, "#fff", CLASH, 2);
    sheet.text(new Point(MARGIN + 50, y + 5), "hinge axis", TEXT, "start", Sheet.INK);
  }
}
