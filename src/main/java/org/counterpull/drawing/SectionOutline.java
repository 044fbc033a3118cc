package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Channel;
import org.counterpull.stock.Flat;
import org.counterpull.stock.ISection;
import org.counterpull.stock.Plate;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.stock.SquareBar;
import org.counterpull.stock.Stock;

/**
 * The outline of a section about the middle of its box: y, z of the part, with sharp corners. Good
 * enough to draw; nothing is calculated from it.
 *
 * @param loops the outer loop anticlockwise, then the bore clockwise
 * @param round true when corners are only facets of a round surface
 */
record SectionOutline(List<List<Vector2D>> loops, boolean round) {
  private static final int ROUND_SIDES = 28;

  static SectionOutline of(Stock stock) {
    if (stock instanceof Flat || stock instanceof Plate || stock instanceof SquareBar) {
      return sharp(box(stock.acrossMm(), stock.upMm()));
    } else if (stock instanceof RectangularTube tube) {
      double walls = 2 * tube.wallMm();
      return new SectionOutline(
          List.of(
              box(tube.acrossMm(), tube.upMm()),
              reversed(box(tube.acrossMm() - walls, tube.upMm() - walls))),
          false);
    } else if (stock instanceof RoundBar bar) {
      return new SectionOutline(List.of(circle(bar.diameterMm() / 2)), true);
    } else if (stock instanceof RoundTube tube) {
      return new SectionOutline(
          List.of(circle(tube.outsideMm() / 2), reversed(circle(tube.insideMm() / 2))), true);
    }
    return sharp(open(stock));
  }

  private static List<Vector2D> open(Stock stock) {
    double b = stock.acrossMm() / 2;
    double h = stock.upMm() / 2;
    if (stock instanceof Angle angle) {
      double t = angle.thicknessMm();
      return points(-b, -h, b, -h, b, t - h, t - b, t - h, t - b, h, -b, h);
    } else if (stock instanceof Channel c) {
      double w = c.webMm() - b;
      double f = h - c.flangeMm();
      return points(-b, -h, b, -h, b, -f, w, -f, w, f, b, f, b, h, -b, h);
    } else if (stock instanceof ISection s) {
      double w = s.webMm() / 2;
      double f = h - s.flangeMm();
      return points(
          -b, -h, b, -h, b, -f, w, -f, w, f, b, f, b, h, -b, h, -b, f, -w, f, -w, -f, -b, -f);
    }
    throw new IllegalStateException("no outline for " + stock);
  }

  private static SectionOutline sharp(List<Vector2D> loop) {
    return new SectionOutline(List.of(loop), false);
  }

  private static List<Vector2D> box(double across, double up) {
    double b = across / 2;
    double h = up / 2;
    return points(-b, -h, b, -h, b, h, -b, h);
  }

  private static List<Vector2D> circle(double radius) {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < ROUND_SIDES; i++) {
      double angle = 2 * Math.PI * i / ROUND_SIDES;
      corners.add(new Vector2D(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    return corners;
  }

  private static List<Vector2D> reversed(List<Vector2D> loop) {
    List<Vector2D> other = new ArrayList<>(loop);
    Collections.reverse(other);
    return other;
  }

  private static List<Vector2D> points(double... coordinates) {
    List<Vector2D> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(new Vector2D(coordinates[i], coordinates[i + 1]));
    }
    return points;
  }
}
