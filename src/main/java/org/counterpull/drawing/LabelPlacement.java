package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Finds places for numbers beside what they name, so that no two numbers cover each other and no
 * leader line crosses another or runs through a number.
 *
 * <p>Each number in turn takes the cheapest of many places around its anchor; then, in a few
 * rounds, each moves again while the others stay. Crowded anchors go first.
 */
final class LabelPlacement {
  private static final int ANGLES = 32;
  private static final int ROUNDS = 8;
  private static final double FARTHEST = 330;
  private static final double MARGIN = 4;
  private static final double COVERS_NUMBER = 1e6;
  private static final double CROSSES_LEADER = 1e5;
  private static final double COVERS_ANCHOR = 2e3;
  private static final double COVERS_WELD = 300;
  private static final double CROSSES_WELD = 60;
  private static final double COVERS_EDGE = 1.5;

  private final double top;
  private final double width;
  private final double height;
  private final List<Stroke> welds;
  private final Inked edges;
  private final Map<Integer, List<Candidate>> candidates = new HashMap<>();

  /**
   * A straight stroke that is already on the sheet.
   *
   * @param from one end
   * @param to the other
   */
  record Stroke(Point from, Point to) {
    boolean crosses(Stroke other) {
      Point r = to.minus(from);
      Point s = other.to.minus(other.from);
      Point gap = other.from.minus(from);
      double det = r.cross(s);
      if (Math.abs(det) < 1e-9) {
        return false;
      }
      double t = gap.cross(s) / det;
      double u = gap.cross(r) / det;
      return t > 0 && t < 1 && u > 0 && u < 1;
    }

    /** Least distance from a point. */
    double distance(Point p) {
      Point along = to.minus(from);
      double length2 = along.dot(along);
      double share =
          length2 == 0 ? 0 : Math.max(0, Math.min(1, p.minus(from).dot(along) / length2));
      return p.distance(from.plus(along.times(share)));
    }
  }

  /**
   * Something to be named.
   *
   * @param anchor where its leader ends
   * @param halfWidth of the number's frame
   * @param halfHeight likewise
   */
  record Wanted(Point anchor, double halfWidth, double halfHeight) {}

  /** A place for a number, and what it costs by itself. */
  private record Candidate(Point at, double cost) {}

  /**
   * A sheet with what is already on it.
   *
   * @param top height of the strip at the top that stays free
   * @param width of the sheet
   * @param height of the sheet
   * @param welds strokes that must be seen
   * @param edges strokes that may be covered where there is no other place
   */
  LabelPlacement(double top, double width, double height, List<Stroke> welds, List<Stroke> edges) {
    this.top = top;
    this.width = width;
    this.height = height;
    this.welds = List.copyOf(welds);
    this.edges = new Inked(width, height, edges);
  }

  /** The middles of the numbers, in the order of {@code wanted}. */
  List<Point> place(List<Wanted> wanted) {
    List<Point> places = new ArrayList<>(Collections.nCopies(wanted.size(), null));
    List<Integer> order =
        IntStream.range(0, wanted.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> room(wanted, i)))
            .toList();
    for (int round = 0; round < ROUNDS; round++) {
      boolean moved = false;
      for (int i : order) {
        Point best = best(wanted, places, i);
        moved |= !best.equals(places.get(i));
        places.set(i, best);
      }
      if (!moved) {
        break;
      }
    }
    return List.copyOf(places);
  }

  /** Distance to the third-nearest anchor. */
  private static double room(List<Wanted> wanted, int i) {
    return wanted.stream()
        .mapToDouble(w -> w.anchor().distance(wanted.get(i).anchor()))
        .sorted()
        .skip(Math.min(3, wanted.size() - 1))
        .findFirst()
        .orElse(0);
  }

  private Point best(List<Wanted> wanted, List<Point> places, int i) {
    Point best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Candidate candidate : candidates.computeIfAbsent(i, k -> candidates(wanted, k))) {
      if (candidate.cost() >= least) {
        break;
      }
      double cost = candidate.cost() + clashes(wanted, places, i, candidate.at(), least);
      if (cost < least) {
        least = cost;
        best = candidate.at();
      }
    }
    return best == null ? clamped(wanted.get(i)) : best;
  }

  /** Every place that is tried for a number, the cheapest first. */
  private List<Candidate> candidates(List<Wanted> wanted, int i) {
    Wanted label = wanted.get(i);
    List<Candidate> all = new ArrayList<>();
    double nearest = label.halfHeight() + 9;
    for (double radius = nearest; radius < FARTHEST; radius += radius < 120 ? 7 : 16) {
      for (int k = 0; k < ANGLES; k++) {
        Point at = label.anchor().plus(Point.polar(radius, 2 * Math.PI * (k + 0.5) / ANGLES));
        if (inside(at, label)) {
          all.add(new Candidate(at, cost(wanted, i, at)));
        }
      }
    }
    all.sort(Comparator.comparingDouble(Candidate::cost));
    return all;
  }

  private boolean inside(Point at, Wanted label) {
    return at.x() > label.halfWidth() + 2
        && at.x() < width - label.halfWidth() - 2
        && at.y() > top + label.halfHeight()
        && at.y() < height - label.halfHeight() - 2;
  }

  private Point clamped(Wanted label) {
    return new Point(
        Math.max(label.halfWidth(), Math.min(width - label.halfWidth(), label.anchor().x())),
        Math.max(
            top + label.halfHeight(), Math.min(height - label.halfHeight(), label.anchor().y())));
  }

  /** What a place costs whatever the other numbers do. */
  private double cost(List<Wanted> wanted, int i, Point at) {
    Wanted label = wanted.get(i);
    Stroke leader = new Stroke(label.anchor(), at);
    double cost = 0.5 * label.anchor().distance(at);
    for (int j = 0; j < wanted.size(); j++) {
      cost += j != i && near(label, at, wanted.get(j).anchor(), 5) ? COVERS_ANCHOR : 0;
    }
    for (Stroke weld : welds) {
      cost += near(label, at, weld, 3) ? COVERS_WELD : 0;
      cost += leader.crosses(weld) ? CROSSES_WELD : 0;
    }
    cost += COVERS_EDGE * edges.count(at, label.halfWidth(), label.halfHeight());
    return cost;
  }

  private static double clashes(
      List<Wanted> wanted, List<Point> places, int i, Point at, double enoughToLose) {
    Wanted label = wanted.get(i);
    Stroke leader = new Stroke(label.anchor(), at);
    double cost = 0;
    for (int j = 0; j < wanted.size() && cost < enoughToLose; j++) {
      if (j != i && places.get(j) != null) {
        cost += clash(label, at, leader, wanted.get(j), places.get(j));
      }
    }
    return cost;
  }

  private static double clash(Wanted label, Point at, Stroke leader, Wanted other, Point there) {
    double cost = 0;
    boolean overlap =
        Math.abs(at.x() - there.x()) < label.halfWidth() + other.halfWidth() + MARGIN
            && Math.abs(at.y() - there.y()) < label.halfHeight() + other.halfHeight() + MARGIN;
    cost += overlap ? COVERS_NUMBER : 0;
    Stroke otherLeader = new Stroke(other.anchor(), there);
    cost += leader.crosses(otherLeader) ? CROSSES_LEADER : 0;
    cost += near(label, at, otherLeader, 2) ? CROSSES_LEADER : 0;
    cost += near(other, there, leader, 2) ? CROSSES_LEADER : 0;
    return cost;
  }

  private static boolean near(Wanted label, Point at, Point p, double margin) {
    return Math.abs(p.x() - at.x()) < label.halfWidth() + margin
        && Math.abs(p.y() - at.y()) < label.halfHeight() + margin;
  }

  /** True when a stroke touches the frame of a number. */
  static boolean near(Wanted label, Point at, Stroke stroke, double margin) {
    double w = label.halfWidth() + margin;
    double h = label.halfHeight() + margin;
    if (Math.min(stroke.from().x(), stroke.to().x()) > at.x() + w
        || Math.max(stroke.from().x(), stroke.to().x()) < at.x() - w
        || Math.min(stroke.from().y(), stroke.to().y()) > at.y() + h
        || Math.max(stroke.from().y(), stroke.to().y()) < at.y() - h) {
      return false;
    }
    if (near(label, at, stroke.from(), margin) || near(label, at, stroke.to(), margin)) {
      return true;
    }
    Stroke falling =
        new Stroke(new Point(at.x() - w, at.y() - h), new Point(at.x() + w, at.y() + h));
    Stroke rising =
        new Stroke(new Point(at.x() - w, at.y() + h), new Point(at.x() + w, at.y() - h));
    return stroke.crosses(falling) || stroke.crosses(rising);
  }
}
