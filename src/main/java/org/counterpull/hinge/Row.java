package org.counterpull.hinge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.access.Spot;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.Weldment;

/**
 * Bores of one size on one axis, along it.
 *
 * @param along unit vector along the axis
 * @param one unit vector square to it: up where it can be
 * @param other the other one
 * @param boreMm diameter
 * @param pinMm pin that turns in them
 * @param holes in their order along the axis
 */
record Row(
    Vector3D along, Vector3D one, Vector3D other, double boreMm, double pinMm, List<Hole> holes) {
  private static final double UPRIGHT = 0.9;

  Row {
    holes = List.copyOf(holes);
  }

  /** Every row of a weldment, by the first feature of each. */
  static List<Row> of(Weldment weldment) {
    List<List<String>> pieces = Pieces.of(weldment);
    List<Spot> left = new ArrayList<>();
    for (Feature feature : weldment.features()) {
      if (feature.turnsOnMm().isPresent() && feature.diameterMm().isPresent()) {
        left.addAll(Spot.of(weldment, feature));
      }
    }
    List<Row> rows = new ArrayList<>();
    while (!left.isEmpty()) {
      Spot first = left.get(0);
      List<Spot> inLine = left.stream().filter(s -> together(weldment, first, s)).toList();
      left.removeAll(inLine);
      rows.add(row(weldment, pieces, inLine));
    }
    return rows;
  }

  private static boolean together(Weldment weldment, Spot first, Spot other) {
    return first == other
        || first.inLineWith(other)
            && first.diameterMm() == other.diameterMm()
            && feature(weldment, first).turnsOnMm().equals(feature(weldment, other).turnsOnMm());
  }

  private static Feature feature(Weldment weldment, Spot spot) {
    return weldment.features().stream()
        .filter(f -> f.name().equals(spot.feature()))
        .findFirst()
        .orElseThrow();
  }

  private static Row row(Weldment weldment, List<List<String>> pieces, List<Spot> spots) {
    Spot first = spots.get(0);
    Vector3D axis = first.axis();
    Vector3D along = axis.getX() + axis.getY() + axis.getZ() < 0 ? axis.negate() : axis;
    Vector3D up = Math.abs(along.getZ()) < UPRIGHT ? Vector3D.PLUS_K : Vector3D.PLUS_J;
    Vector3D one = up.subtract(along.scalarMultiply(up.dotProduct(along))).normalize();
    List<Hole> holes = new ArrayList<>();
    for (Spot spot : spots) {
      int piece = 0;
      while (!pieces.get(piece).contains(spot.part())) {
        piece++;
      }
      holes.add(Hole.of(weldment, feature(weldment, spot), spot, piece));
    }
    holes.sort(Comparator.comparingDouble(hole -> hole.at().dotProduct(along)));
    Feature sized = feature(weldment, first);
    return new Row(
        along,
        one,
        along.crossProduct(one),
        sized.diameterMm().orElseThrow(),
        sized.turnsOnMm().orElseThrow(),
        holes);
  }

  /** Names of its features, file order. */
  String name(Weldment weldment) {
    return weldment.features().stream()
        .filter(feature -> holes.stream().anyMatch(hole -> hole.feature().equals(feature)))
        .map(Feature::name)
        .collect(Collectors.joining(", "));
  }

  /** True for barrels, false for holes in lugs. */
  boolean hinge() {
    return holes.stream().allMatch(Hole::barrel);
  }

  boolean holds(String part) {
    return holes.stream().anyMatch(hole -> hole.part().name().equals(part));
  }

  /** Where a point is along the axis, from the beginning of the first bore. */
  double alongMm(Vector3D point) {
    return point.subtract(holes.get(0).end(along, true)).dotProduct(along);
  }

  /** From the beginning of the first bore to the end of the last. */
  double lengthMm() {
    return alongMm(holes.get(holes.size() - 1).end(along, false));
  }
}
