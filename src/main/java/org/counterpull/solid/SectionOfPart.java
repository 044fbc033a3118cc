package org.counterpull.solid;

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
import org.counterpull.weldment.Part;

/** The section of a part about the middle of its box, with sharp corners. */
final class SectionOfPart {
  private SectionOfPart() {}

  /** Section in u = part y, v = part z. */
  static Section across(Part part) {
    Stock stock = part.stock();
    if (stock instanceof Flat flat) {
      return rectangle(flat.widthMm(), flat.thicknessMm());
    } else if (stock instanceof Plate plate) {
      return rectangle(width(part, plate), plate.thicknessMm());
    } else if (stock instanceof SquareBar bar) {
      return rectangle(bar.sideMm(), bar.sideMm());
    } else if (stock instanceof Angle angle) {
      return angle(angle);
    } else if (stock instanceof Channel channel) {
      return channel(channel);
    } else if (stock instanceof ISection section) {
      return iSection(section);
    } else if (stock instanceof RectangularTube tube) {
      return tube(tube);
    } else if (stock instanceof RoundBar bar) {
      return new Section.Round(bar.diameterMm() / 2, 0);
    } else if (stock instanceof RoundTube tube) {
      double radius = tube.outsideMm() / 2;
      return new Section.Round(radius, radius - tube.wallMm());
    }
    throw new IllegalStateException("no section for " + stock);
  }

  /** Outline of a plate in u = part x, v = part y. */
  static Section outline(Part part, double thicknessMm) {
    List<Vector2D> corners = new ArrayList<>();
    for (Vector2D corner : part.outline()) {
      if (corners.isEmpty() || corner.distance(corners.get(corners.size() - 1)) > 1e-6) {
        corners.add(corner);
      }
    }
    if (corners.get(0).distance(corners.get(corners.size() - 1)) <= 1e-6) {
      corners.remove(corners.size() - 1);
    }
    if (PlanePolygon.area(corners) < 0) {
      Collections.reverse(corners);
    }
    return oneLoop(corners, Collections.nCopies(corners.size(), thicknessMm));
  }

  private static double width(Part part, Plate plate) {
    return plate
        .widthMm()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "plate " + part.name() + " has neither width nor outline"));
  }

  private static Section rectangle(double acrossMm, double upMm) {
    double wall = Math.min(acrossMm, upMm);
    return oneLoop(corners(acrossMm / 2, upMm / 2), List.of(wall, wall, wall, wall));
  }

  private static Section tube(RectangularTube tube) {
    double wall = tube.wallMm();
    List<Double> walls = List.of(wall, wall, wall, wall);
    List<Vector2D> bore =
        new ArrayList<>(corners(tube.acrossMm() / 2 - wall, tube.upMm() / 2 - wall));
    Collections.reverse(bore);
    return new Section.Polygonal(
        List.of(
            new Section.Loop(corners(tube.acrossMm() / 2, tube.upMm() / 2), walls, false),
            new Section.Loop(bore, walls, true)));
  }

  private static Section angle(Angle angle) {
    double b = angle.lyingMm() / 2;
    double h = angle.uprightMm() / 2;
    double t = angle.thicknessMm();
    return oneLoop(
        points(-b, -h, b, -h, b, t - h, t - b, t - h, t - b, h, -b, h), Collections.nCopies(6, t));
  }

  private static Section channel(Channel channel) {
    double b = channel.widthMm() / 2;
    double h = channel.heightMm() / 2;
    double w = channel.webMm();
    double f = channel.flangeMm();
    return oneLoop(
        points(-b, -h, b, -h, b, f - h, w - b, f - h, w - b, h - f, b, h - f, b, h, -b, h),
        List.of(f, f, f, w, f, f, f, w));
  }

  private static Section iSection(ISection section) {
    double b = section.widthMm() / 2;
    double h = section.heightMm() / 2;
    double w = section.webMm() / 2;
    double f = section.flangeMm();
    double web = section.webMm();
    List<Vector2D> corners =
        points(
            -b, -h, b, -h, b, f - h, w, f - h, w, h - f, b, h - f, b, h, -b, h, -b, h - f, -w,
            h - f, -w, f - h, -b, f - h);
    return oneLoop(corners, List.of(f, f, f, web, f, f, f, f, f, web, f, f));
  }

  private static Section oneLoop(List<Vector2D> corners, List<Double> walls) {
    return new Section.Polygonal(List.of(new Section.Loop(corners, walls, false)));
  }

  private static List<Vector2D> corners(double b, double h) {
    return points(-b, -h, b, -h, b, h, -b, h);
  }

  private static List<Vector2D> points(double... coordinates) {
    List<Vector2D> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(new Vector2D(coordinates[i], coordinates[i + 1]));
    }
    return points;
  }
}
