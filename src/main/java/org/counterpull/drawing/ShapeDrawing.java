package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.markup.Markup;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.MovedPart;
import org.counterpull.plan.PullAnswer.Station;
import org.counterpull.weldment.Part;

/**
 * The weldment before and after welding: thin grey as fitted, heavy as it comes out, its movement
 * drawn larger by a factor that is stated.
 */
public final class ShapeDrawing {
  private static final String BEFORE = "#a0a0a0";
  private static final double RIM_PX = 40;
  private static final double HEAD_PX = 64;
  private static final double SEEN_SHARE = 0.06;
  private static final int PIECES = 12;

  /** A bar tells its shape at so many places; a plate at more. */
  private static final int ALONG_A_BAR = 9;

  private static final double[] ROUND_FACTORS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

  private final PullAnswer answer;
  private final Camera camera = Camera.CORNERS.get(0);
  private final double width;
  private final Map<String, List<Station>> stations = new HashMap<>();
  private final List<PartShape> shapes = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private double factor = 1;
  private double scale;
  private Point shift;
  private double height;

  private ShapeDrawing(PullAnswer answer, double widthPx) {
    this.answer = answer;
    this.width = widthPx;
    for (MovedPart part : answer.released()) {
      stations.put(part.part(), part.stations());
    }
    for (Part part : answer.weldment().parts()) {
      shapes.add(PartShape.of(part));
      names.add(part.name());
    }
    factor = factor();
    fit();
  }

  /** The drawing at a width in pixels. */
  public static Markup of(PullAnswer answer, double widthPx) {
    return new ShapeDrawing(answer, widthPx).draw();
  }

  /** The round factor that makes the largest movement about a sixteenth of the picture. */
  private double factor() {
    double most = 0;
    for (List<Station> all : stations.values()) {
      for (Station station : all) {
        most = Math.max(most, station.shift().getNorm());
      }
    }
    double wanted = SEEN_SHARE * span() / Math.max(1e-6, most);
    double best = ROUND_FACTORS[0];
    for (double round : ROUND_FACTORS) {
      best = round <= wanted ? round : best;
    }
    return best;
  }

  private double span() {
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    for (PartShape shape : shapes) {
      for (PartShape.Edge edge : shape.edges()) {
        left = Math.min(left, camera.flat(edge.from()).x());
        right = Math.max(right, camera.flat(edge.from()).x());
      }
    }
    return right - left;
  }

  private void fit() {
    double left = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (int i = 0; i < shapes.size(); i++) {
      for (PartShape.Edge edge : shapes.get(i).edges()) {
        for (Vector3D p : List.of(edge.from(), moved(names.get(i), edge.from()))) {
          Point flat = camera.flat(p);
          left = Math.min(left, flat.x());
          right = Math.max(right, flat.x());
          top = Math.min(top, flat.y());
          bottom = Math.max(bottom, flat.y());
        }
      }
    }
    scale =
        Math.min(
            (width - 2 * RIM_PX) / Math.max(1, right - left),
            0.75 * width / Math.max(1, bottom - top));
    height = HEAD_PX + scale * (bottom - top) + 2 * RIM_PX;
    double spare = width - 2 * RIM_PX - scale * (right - left);
    shift = new Point(RIM_PX + spare / 2 - scale * left, HEAD_PX + RIM_PX - scale * top);
  }

  private Point onSheet(Vector3D p) {
    return camera.flat(p).times(scale).plus(shift);
  }

  /** Where a point of a part is drawn after welding. */
  private Vector3D moved(String part, Vector3D point) {
    List<Station> all = stations.getOrDefault(part, List.of());
    if (all.isEmpty()) {
      return point;
    }
    if (all.size() > ALONG_A_BAR) {
      return point.add(factor, overPlate(all, point));
    }
    // The two nearest stations, weighted by nearness, carry the point with their shift and turn.
    Station first = all.get(0);
    Station second = all.get(0);
    double near = Double.MAX_VALUE;
    double next = Double.MAX_VALUE;
    for (Station station : all) {
      double distance = station.at().distance(point);
      if (distance < near) {
        second = first;
        next = near;
        first = station;
        near = distance;
      } else if (distance < next) {
        second = station;
        next = distance;
      }
    }
    double share = all.size() == 1 ? 0 : between(first, second, point);
    Vector3D shifted =
        new Vector3D(1 - share, carried(first, point), share, carried(second, point));
    return point.add(factor, shifted);
  }

  /** On a plate every station counts, the near ones most. */
  private static Vector3D overPlate(List<Station> all, Vector3D point) {
    Vector3D sum = Vector3D.ZERO;
    double weights = 0;
    for (Station station : all) {
      double weight = 1 / Math.pow(1 + station.at().distanceSq(point), 2);
      sum = sum.add(weight, carried(station, point));
      weights += weight;
    }
    return sum.scalarMultiply(1 / weights);
  }

  private static double between(Station first, Station second, Vector3D point) {
    Vector3D way = second.at().subtract(first.at());
    double along = point.subtract(first.at()).dotProduct(way) / Math.max(1e-9, way.getNormSq());
    return Math.max(0, Math.min(1, along));
  }

  private static Vector3D carried(Station station, Vector3D point) {
    return station.shift().add(station.turn().crossProduct(point.subtract(station.at())));
  }

  private Markup draw() {
    String title = answer.weldment().name() + " before and after welding, " + camera.words();
    Sheet sheet =
        new Sheet(
            "shape",
            width,
            height,
            title,
            "Grey: as fitted. Black: as it comes out, movement drawn "
                + number(factor)
                + " times as large.");
    for (PartShape shape : shapes) {
      for (PartShape.Edge edge : shape.edges()) {
        if (drawn(edge)) {
          sheet.line(onSheet(edge.from()), onSheet(edge.to()), BEFORE, 1);
        }
      }
    }
    for (int i = 0; i < shapes.size(); i++) {
      for (PartShape.Edge edge : shapes.get(i).edges()) {
        if (drawn(edge)) {
          after(sheet, names.get(i), edge);
        }
      }
    }
    sheet.bold(new Point(10, 22), title, 16, "start");
    sheet.text(
        new Point(10, 44),
        "Grey: as fitted. Black: as it comes out, fixtures off, movement drawn "
            + number(factor)
            + " times as large.",
        14,
        "start",
        Sheet.INK);
    return sheet.done();
  }

  private void after(Sheet sheet, String part, PartShape.Edge edge) {
    List<Point> points = new ArrayList<>();
    for (int k = 0; k <= PIECES; k++) {
      double share = (double) k / PIECES;
      points.add(onSheet(moved(part, new Vector3D(1 - share, edge.from(), share, edge.to()))));
    }
    sheet.polyline(points, Sheet.INK, 1.6, "");
  }

  /** Outlines of round parts and every sharp edge of which a face looks this way. */
  private boolean drawn(PartShape.Edge edge) {
    boolean first = camera.sees(edge.first());
    boolean second = camera.sees(edge.second());
    return edge.smooth() ? first != second : first || second;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
