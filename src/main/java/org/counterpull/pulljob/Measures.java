package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.counterpull.pull.Assembly;
import org.counterpull.pull.Coordinate;
import org.counterpull.pull.MaterialPoint;
import org.counterpull.pulljob.Measure.Point;
import org.counterpull.pulljob.Measure.Rule;
import org.counterpull.space.Face;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Check.Subject;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Brings checks to the shape engine, with the datum and the zone that the manual gives each. */
final class Measures {
  private final Weldment weldment;
  private final PartPoints points;
  private final Assembly assembly;

  /** Finds the carried point of a part, and which parts hang together. */
  interface PartPoints {
    MaterialPoint at(String part, Vector3D point);

    int groupOf(String part);
  }

  Measures(Weldment weldment, Assembly assembly, PartPoints points) {
    this.weldment = weldment;
    this.assembly = assembly;
    this.points = points;
  }

  /** Points that a check looks at, by part. */
  static Map<String, List<Vector3D>> needed(Weldment weldment, Check check) {
    Map<String, List<Vector3D>> needed = new LinkedHashMap<>();
    for (Subject subject : check.subjects()) {
      Part part = weldment.part(subject.part());
      List<Vector3D> own = needed.computeIfAbsent(part.name(), n -> new ArrayList<>());
      own.addAll(Spots.axis(part));
      own.add(Spots.middle(weldment, subject));
      if (check.kind() == Check.Kind.FLAT) {
        own.addAll(Spots.over(part, subject.face().orElse(Face.TOP)));
      }
    }
    return needed;
  }

  Measure of(Check check) {
    double tolerance = CheckTolerance.mm(weldment, check).value();
    boolean together =
        check.subjects().stream().map(s -> points.groupOf(s.part())).distinct().count() == 1;
    if (!together && check.kind() != Check.Kind.COAXIAL) {
      return new Measure(
          check, tolerance, Rule.SIGNED, List.of(), "its parts aren't welded to each other");
    }
    return switch (check.kind()) {
      case DISTANCE -> new Measure(check, tolerance, Rule.SIGNED, List.of(distance(check)), "");
      case STRAIGHT -> new Measure(check, tolerance, Rule.FARTHEST, straight(check), "");
      case FLAT -> new Measure(check, tolerance, Rule.SPAN, flat(check), "");
      case SQUARE -> new Measure(check, tolerance, Rule.FARTHEST, leaning(check, true), "");
      case PARALLEL -> new Measure(check, tolerance, Rule.FARTHEST, leaning(check, false), "");
      case COAXIAL -> new Measure(check, tolerance, Rule.FARTHEST, coaxial(check), "");
    };
  }

  private MaterialPoint at(String part, Vector3D point) {
    return points.at(part, point);
  }

  private Coordinate moved(String part, Vector3D point, Vector3D direction) {
    return assembly.displacement(at(part, point), direction);
  }

  /** Between the middles, along the direction in which the first face looks and goes on looking. */
  private Point distance(Check check) {
    Subject first = check.subjects().get(0);
    Subject second = check.subjects().get(1);
    Vector3D from = Spots.middle(weldment, first);
    Vector3D to = Spots.middle(weldment, second);
    Vector3D between = to.subtract(from);
    Vector3D way =
        first
            .face()
            .map(face -> weldment.part(first.part()).frame().normal(face))
            .orElse(between.normalize());
    Vector3D towards = way.dotProduct(between) < 0 ? way.negate() : way;
    Coordinate opening =
        moved(second.part(), to, towards).plus(moved(first.part(), from, towards).times(-1));
    Vector3D turns = towards.crossProduct(between);
    Coordinate whole =
        first.face().isPresent()
            ? opening.plus(Coordinate.turn(at(first.part(), from), turns))
            : opening;
    return new Point(second.part(), "", List.of(towards), List.of(whole));
  }

  private List<Point> straight(Check check) {
    Part part = weldment.part(check.subjects().get(0).part());
    List<Vector3D> axis = Spots.axis(part);
    Vector3D left = axis.get(0);
    Vector3D right = axis.get(axis.size() - 1);
    List<Point> found = new ArrayList<>();
    List<Vector3D> ways = List.of(part.frame().y(), part.frame().z());
    for (int i = 1; i < axis.size() - 1; i++) {
      double share = (double) i / (axis.size() - 1);
      List<Coordinate> group = new ArrayList<>();
      for (Vector3D way : ways) {
        group.add(
            moved(part.name(), axis.get(i), way)
                .plus(moved(part.name(), left, way).times(share - 1))
                .plus(moved(part.name(), right, way).times(-share)));
      }
      String where = String.format(Locale.ROOT, "%.0f mm from left", part.lengthMm() * share);
      found.add(new Point(part.name(), where, ways, group));
    }
    return found;
  }

  private List<Point> flat(Check check) {
    Subject subject = check.subjects().get(0);
    Part part = weldment.part(subject.part());
    Face face = subject.face().orElse(Face.TOP);
    Vector3D normal = part.frame().normal(face);
    List<Vector3D> spots = Spots.over(part, face);
    List<double[]> rows = new ArrayList<>();
    for (Vector3D spot : spots) {
      Vector3D local = spot.subtract(spots.get(0));
      Vector3D a = spots.get(1).subtract(spots.get(0)).normalize();
      Vector3D b = normal.crossProduct(a);
      rows.add(new double[] {1, local.dotProduct(a), local.dotProduct(b)});
    }
    List<Coordinate> raw = spots.stream().map(s -> moved(part.name(), s, normal)).toList();
    return residuals(rows, raw).stream()
        .map(off -> new Point(part.name(), face.word(), List.of(normal), List.of(off)))
        .toList();
  }

  /** How far values lie off the best fit of the given shapes, as coordinates again. */
  private static List<Coordinate> residuals(List<double[]> shapes, List<Coordinate> raw) {
    RealMatrix x = new Array2DRowRealMatrix(shapes.toArray(double[][]::new));
    RealMatrix inverse = new LUDecomposition(x.transpose().multiply(x)).getSolver().getInverse();
    RealMatrix hat = x.multiply(inverse).multiply(x.transpose());
    List<Coordinate> residuals = new ArrayList<>();
    for (int i = 0; i < raw.size(); i++) {
      Coordinate sum = raw.get(i);
      for (int j = 0; j < raw.size(); j++) {
        sum = sum.plus(raw.get(j).times(-hat.getEntry(i, j)));
      }
      residuals.add(sum);
    }
    return residuals;
  }

  /** How far the second departs from square or parallel to the first, over its own length. */
  private List<Point> leaning(Check check, boolean square) {
    Looking datum = looking(check.subjects().get(0));
    Looking second = looking(check.subjects().get(1));
    String part = check.subjects().get(1).part();
    double length = weldment.part(part).lengthMm();
    boolean mixed = datum.face != second.face;
    // An axis is parallel to a face when it is square to the face's normal, and the other way
    // round.
    if (square != mixed) {
      Coordinate change = datum.turned(second.way).plus(second.turned(datum.way));
      return List.of(new Point(part, "far end", List.of(datum.way), List.of(change.times(length))));
    }
    double sign = datum.way.dotProduct(second.way) < 0 ? -1 : 1;
    Vector3D one = second.way.orthogonal();
    Vector3D other = second.way.crossProduct(one);
    List<Coordinate> group = new ArrayList<>();
    for (Vector3D way : List.of(one, other)) {
      group.add(second.turned(way).plus(datum.turned(way).times(-sign)).times(length));
    }
    return List.of(new Point(part, "far end", List.of(one, other), group));
  }

  /** A direction that belongs to a part: of its axis, or out of a face. */
  private final class Looking {
    private final String part;
    private final boolean face;
    private final Vector3D way;
    private final Vector3D from;
    private final Vector3D to;

    Looking(String part, Optional<Vector3D> normal, Vector3D from, Vector3D to) {
      this.part = part;
      this.face = normal.isPresent();
      this.way = normal.orElseGet(() -> to.subtract(from).normalize());
      this.from = from;
      this.to = to;
    }

    /** How far its tip moves along another direction as it turns. */
    Coordinate turned(Vector3D along) {
      if (face) {
        return Coordinate.turn(at(part, from), way.crossProduct(along));
      }
      Vector3D aside = along.subtract(way.scalarMultiply(along.dotProduct(way)));
      return moved(part, to, aside)
          .plus(moved(part, from, aside).times(-1))
          .times(1 / to.distance(from));
    }
  }

  private Looking looking(Subject subject) {
    Part part = weldment.part(subject.part());
    if (subject.face().isPresent()) {
      Vector3D middle = Spots.middle(weldment, subject);
      return new Looking(
          part.name(), subject.face().map(face -> part.frame().normal(face)), middle, middle);
    }
    List<Vector3D> axis = Spots.axis(part);
    return new Looking(part.name(), Optional.empty(), axis.get(0), axis.get(axis.size() - 1));
  }

  /**
   * Ends of the axes off the line that fits them best. Groups of parts that only pins join are
   * brought into line with each other as they are hung, so each group has a line of its own.
   */
  private List<Point> coaxial(Check check) {
    Map<Integer, List<Part>> groups = new LinkedHashMap<>();
    for (Subject subject : check.subjects()) {
      groups
          .computeIfAbsent(points.groupOf(subject.part()), g -> new ArrayList<>())
          .add(weldment.part(subject.part()));
    }
    List<Point> all = new ArrayList<>();
    groups.values().forEach(parts -> all.addAll(line(parts)));
    return all;
  }

  private List<Point> line(List<Part> parts) {
    Vector3D way = parts.get(0).frame().x();
    Vector3D one = way.orthogonal();
    Vector3D other = way.crossProduct(one);
    List<double[]> rows = new ArrayList<>();
    List<Coordinate> ones = new ArrayList<>();
    List<Coordinate> others = new ArrayList<>();
    for (Part part : parts) {
      List<Vector3D> axis = Spots.axis(part);
      for (Vector3D end : List.of(axis.get(0), axis.get(axis.size() - 1))) {
        rows.add(new double[] {1, end.subtract(Spots.axis(parts.get(0)).get(0)).dotProduct(way)});
        ones.add(moved(part.name(), end, one));
        others.add(moved(part.name(), end, other));
      }
    }
    List<Coordinate> offOne = residuals(rows, ones);
    List<Coordinate> offOther = residuals(rows, others);
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < offOne.size(); i++) {
      found.add(
          new Point(
              parts.get(i / 2).name(),
              i % 2 == 0 ? "left end" : "right end",
              List.of(one, other),
              List.of(offOne.get(i), offOther.get(i))));
    }
    return found;
  }
}
