package org.counterpull.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;

/** The plane faces of a swept section: one per straight side, and the two ends. */
final class FaceBuilder {
  /** A side is an edge rather than a face when it is at most this many walls wide. */
  private static final double NARROW = 1.5;

  private final Frame sweep;
  private final Section section;
  private final Cut low;
  private final Cut high;
  private final boolean sweptThroughThickness;

  FaceBuilder(Frame sweep, Section section, Cut low, Cut high, boolean sweptThroughThickness) {
    this.sweep = sweep;
    this.section = section;
    this.low = low;
    this.high = high;
    this.sweptThroughThickness = sweptThroughThickness;
  }

  List<FlatFace> faces() {
    List<FlatFace> faces = new ArrayList<>();
    if (section instanceof Section.Polygonal polygonal) {
      for (Section.Loop loop : polygonal.loops()) {
        for (int i = 0; i < loop.corners().size(); i++) {
          faces.add(side(polygonal, loop, i));
        }
      }
    }
    faces.add(end(low, false));
    faces.add(end(high, true));
    return faces;
  }

  private FlatFace side(Section.Polygonal polygonal, Section.Loop loop, int i) {
    int size = loop.corners().size();
    Vector2D a = loop.corners().get(i);
    Vector2D b = loop.corners().get((i + 1) % size);
    Vector3D lowA = at(a, low);
    Vector3D lowB = at(b, low);
    Vector3D highA = at(a, high);
    Vector3D highB = at(b, high);
    Vector3D normal = sideNormal(loop, i);
    double wall = loop.wallsMm().get(i);
    List<FlatFace.Edge> edges = new ArrayList<>();
    edges.add(edge(lowA, lowB, normal, endNormal(low, false), wall));
    edges.add(corner(lowB, highB, loop, i, (i + 1) % size));
    edges.add(edge(highB, highA, normal, endNormal(high, true), wall));
    edges.add(corner(highA, lowA, loop, i, (i + size - 1) % size));
    return new FlatFace(normal, edges, kind(polygonal, loop, i), wall);
  }

  private FlatFace.Edge corner(
      Vector3D from, Vector3D to, Section.Loop loop, int side, int neighbour) {
    Vector3D there = sideNormal(loop, neighbour);
    Vector3D here = sideNormal(loop, side);
    int first = (side + 1) % loop.corners().size() == neighbour ? side : neighbour;
    double turn = PlanePolygon.cross(direction(loop, first), direction(loop, first + 1));
    double between = Math.toDegrees(Vector3D.angle(here, there));
    double material = 180 - Math.signum(turn) * between;
    double wall = loop.wallsMm().get(side);
    return new FlatFace.StraightEdge(from, to, there, material, wall, false, false);
  }

  private static FlatFace.Edge edge(
      Vector3D from, Vector3D to, Vector3D here, Vector3D there, double wall) {
    double material = 180 - Math.toDegrees(Vector3D.angle(here, there));
    return new FlatFace.StraightEdge(from, to, there, material, wall, false, false);
  }

  private FlatFace end(Cut cut, boolean far) {
    List<FlatFace.Edge> edges = new ArrayList<>();
    Vector3D normal = endNormal(cut, far);
    double wall = 0;
    if (section instanceof Section.Polygonal polygonal) {
      for (Section.Loop loop : polygonal.loops()) {
        wall = Math.max(wall, Collections.max(loop.wallsMm()));
        for (int i = 0; i < loop.corners().size(); i++) {
          edges.add(rimSide(loop, i, cut, far));
        }
      }
    } else if (section instanceof Section.Round round) {
      wall = round.wallMm();
      edges.addAll(rim(round.radiusMm(), wall, false, cut, far));
      if (round.boreMm() > 0) {
        edges.addAll(rim(round.boreMm(), wall, true, cut, far));
      }
    }
    FlatFace.Kind kind = sweptThroughThickness ? FlatFace.Kind.BROAD : FlatFace.Kind.END;
    // Behind the end of a short piece, such as a disc, there is no more metal than its length.
    double behind = Math.min(wall, high.atAxisMm() - low.atAxisMm());
    return new FlatFace(normal, edges, kind, behind);
  }

  private FlatFace.Edge rimSide(Section.Loop loop, int i, Cut cut, boolean far) {
    Vector3D a = at(loop.corners().get(i), cut);
    Vector3D b = at(PlanePolygon.next(loop.corners(), i), cut);
    Vector3D there = sideNormal(loop, i);
    double material = 180 - Math.toDegrees(Vector3D.angle(endNormal(cut, far), there));
    return new FlatFace.StraightEdge(
        far ? a : b, far ? b : a, there, material, loop.wallsMm().get(i), loop.hole(), false);
  }

  private List<FlatFace.Edge> rim(double radius, double wall, boolean hole, Cut cut, boolean far) {
    Vector3D normal = endNormal(cut, far);
    if (cut.isSquare()) {
      Vector3D centre = sweep.outOf(new Vector3D(0, 0, cut.atAxisMm()));
      return List.of(new FlatFace.RoundEdge(centre, normal, radius, wall, hole));
    }
    List<FlatFace.Edge> chords = new ArrayList<>();
    for (int i = 0; i < Solid.RIM_SIDES; i++) {
      double step = 2 * Math.PI / Solid.RIM_SIDES * (far == hole ? -1 : 1);
      Vector3D a = at(onCircle(radius, i * step), cut);
      Vector3D b = at(onCircle(radius, (i + 1) * step), cut);
      Vector2D out = onCircle(hole ? -1 : 1, (i + 0.5) * step);
      Vector3D there = sweep.directionOutOf(new Vector3D(out.getX(), out.getY(), 0));
      double material = 180 - Math.toDegrees(Vector3D.angle(normal, there));
      chords.add(new FlatFace.StraightEdge(a, b, there, material, wall, hole, true));
    }
    return chords;
  }

  private static Vector2D onCircle(double radius, double angle) {
    return new Vector2D(radius * Math.cos(angle), radius * Math.sin(angle));
  }

  private FlatFace.Kind kind(Section.Polygonal polygonal, Section.Loop loop, int i) {
    if (sweptThroughThickness) {
      return FlatFace.Kind.NARROW;
    }
    boolean hasBroad =
        polygonal.loops().stream()
            .anyMatch(
                any -> {
                  boolean broad = false;
                  for (int k = 0; k < any.corners().size(); k++) {
                    broad |= !narrow(any, k);
                  }
                  return broad;
                });
    return hasBroad && narrow(loop, i) ? FlatFace.Kind.NARROW : FlatFace.Kind.BROAD;
  }

  private static boolean narrow(Section.Loop loop, int i) {
    double width = loop.corners().get(i).distance(PlanePolygon.next(loop.corners(), i));
    return width <= NARROW * loop.wallsMm().get(i);
  }

  private static Vector2D direction(Section.Loop loop, int i) {
    int at = i % loop.corners().size();
    return PlanePolygon.next(loop.corners(), at).subtract(loop.corners().get(at)).normalize();
  }

  private Vector3D sideNormal(Section.Loop loop, int i) {
    Vector2D along = direction(loop, i);
    return sweep.directionOutOf(new Vector3D(along.getY(), -along.getX(), 0));
  }

  private Vector3D endNormal(Cut cut, boolean far) {
    Vector3D normal = sweep.directionOutOf(cut.normal());
    return far ? normal : normal.negate();
  }

  private Vector3D at(Vector2D point, Cut cut) {
    double w = cut.at(point.getX(), point.getY());
    return sweep.outOf(new Vector3D(point.getX(), point.getY(), w));
  }
}
