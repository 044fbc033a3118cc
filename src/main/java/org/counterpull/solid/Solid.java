package org.counterpull.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Face;
import org.counterpull.space.Frame;
import org.counterpull.stock.Plate;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;

/**
 * The space that a part fills: a section swept along a straight line between two planes.
 *
 * <p>Bars are swept along their length, plates with an outline through their thickness.
 *
 * <p>Limits: corners are sharp; a round end that is cut at an angle has an elliptical rim, drawn as
 * a polygon of {@value #RIM_SIDES} sides (its area is 0.05 % small); two mitres must not meet
 * within the part.
 */
public final class Solid {
  static final int RIM_SIDES = 120;

  private final String name;
  private final Frame sweep;
  private final Section section;
  private final Cut low;
  private final Cut high;
  private final boolean sweptThroughThickness;
  private final List<FlatFace> faces;
  private final List<ConvexPiece> pieces;
  private final List<PieceReach> reaches;
  private final Box box;

  private Solid(
      String name, Frame sweep, Section section, Cut low, Cut high, boolean sweptThroughThickness) {
    this.name = name;
    this.sweep = sweep;
    this.section = section;
    this.low = low;
    this.high = high;
    this.sweptThroughThickness = sweptThroughThickness;
    for (Vector2D corner : section.hull()) {
      if (high.at(corner.getX(), corner.getY()) - low.at(corner.getX(), corner.getY()) < 0) {
        throw new IllegalArgumentException("the two cut ends of " + name + " meet within the part");
      }
    }
    faces = new FaceBuilder(sweep, section, low, high, sweptThroughThickness).faces();
    List<List<Vector2D>> split = section.convexPieces();
    pieces = split.stream().map(p -> ConvexPiece.prism(sweep, p, low, high)).toList();
    reaches =
        section instanceof Section.Round round
            ? List.of(PieceReach.round(sweep, round, low, high))
            : split.stream().map(p -> PieceReach.polygon(sweep, p, low, high)).toList();
    box = boxOf();
  }

  /** The solid of a part in weldment axes. */
  public static Solid of(Part part) {
    Frame f = part.frame();
    if (part.outline().isEmpty()) {
      Section section = SectionOfPart.across(part);
      return new Solid(
          part.name(),
          new Frame(f.origin(), f.y(), f.z(), f.x()),
          section,
          cut(part.left(), section, 0, 1),
          cut(part.right(), section, part.lengthMm(), -1),
          false);
    }
    double thickness = ((Plate) part.stock()).thicknessMm();
    return new Solid(
        part.name(),
        f,
        SectionOfPart.outline(part, thickness),
        Cut.square(-thickness / 2),
        Cut.square(thickness / 2),
        true);
  }

  /** The same solid in the axes of a frame. */
  public Solid in(Frame axes) {
    Frame moved =
        new Frame(
            axes.into(sweep.origin()),
            axes.directionInto(sweep.x()),
            axes.directionInto(sweep.y()),
            axes.directionInto(sweep.z()));
    return new Solid(name, moved, section, low, high, sweptThroughThickness);
  }

  private static Cut cut(EndCut end, Section section, double atMm, int inward) {
    if (end.square()) {
      return Cut.square(atMm);
    }
    Face longSide = end.longSide().orElseThrow();
    double sideU = longSide.normal().getY();
    double sideV = longSide.normal().getZ();
    if (sideU == 0 && sideV == 0) {
      throw new IllegalArgumentException("an end has no long side " + longSide.word());
    }
    double slope = Math.tan(Math.toRadians(end.degreesOffSquare())) * inward;
    double reach =
        section instanceof Section.Round round
            ? round.radiusMm()
            : section.hull().stream()
                .mapToDouble(c -> c.getX() * sideU + c.getY() * sideV)
                .max()
                .orElseThrow();
    return new Cut(atMm + slope * reach, -slope * sideU, -slope * sideV);
  }

  private Box boxOf() {
    if (section instanceof Section.Round round) {
      return roundBox(round);
    }
    List<Vector3D> corners = new ArrayList<>();
    for (Vector2D at : section.hull()) {
      corners.add(point(at.getX(), at.getY(), low.at(at.getX(), at.getY())));
      corners.add(point(at.getX(), at.getY(), high.at(at.getX(), at.getY())));
    }
    return Box.around(corners);
  }

  /** The box around both rims: exact for square ends, and never too small. */
  private Box roundBox(Section.Round round) {
    double r = round.radiusMm();
    List<Vector3D> corners = new ArrayList<>();
    for (Cut cut : List.of(low, high)) {
      Vector3D centre = point(0, 0, cut.atAxisMm());
      Vector3D n = cut.normal();
      double longest = r / Math.abs(n.getZ());
      Vector3D out = sweep.directionOutOf(n);
      Vector3D arm =
          new Vector3D(arm(out.getX()), arm(out.getY()), arm(out.getZ())).scalarMultiply(longest);
      corners.add(centre.add(arm));
      corners.add(centre.subtract(arm));
    }
    return Box.around(corners);
  }

  private static double arm(double along) {
    return Math.sqrt(Math.max(0, 1 - along * along));
  }

  private Vector3D point(double u, double v, double w) {
    return sweep.outOf(new Vector3D(u, v, w));
  }

  /** Name of the part. */
  public String name() {
    return name;
  }

  /** Plane faces. */
  public List<FlatFace> faces() {
    return faces;
  }

  /** Convex polytopes that fill it; round ones are inscribed, at most 0.15 mm inside. */
  public List<ConvexPiece> pieces() {
    return pieces;
  }

  /** The pieces again, exactly round where they are round, for nearest points. */
  public List<PieceReach> reaches() {
    return reaches;
  }

  /** The outside of a round part. */
  public Optional<Cylinder> cylinder() {
    return section instanceof Section.Round round
        ? Optional.of(new Cylinder(sweep, round, low, high))
        : Optional.empty();
  }

  /** Section, origin and direction of the sweep. */
  public Section section() {
    return section;
  }

  /** Axes of the sweep: x and y in the section, z along the sweep. */
  public Frame sweep() {
    return sweep;
  }

  /** Where the sweep's axis begins, mm along it from the frame's origin. */
  public double fromMm() {
    return low.atAxisMm();
  }

  /** Where the sweep's axis ends. */
  public double toMm() {
    return high.atAxisMm();
  }

  /** The box around it. */
  public Box box() {
    return box;
  }

  /** Corners of each convex piece that fills it. */
  public List<List<Vector3D>> pieceCorners() {
    return pieces.stream().map(ConvexPiece::corners).toList();
  }

  /** Middle of the volume: the section's centroid half way between the ends there. */
  public Vector3D middle() {
    Vector2D c = section.centroid();
    double w = (low.at(c.getX(), c.getY()) + high.at(c.getX(), c.getY())) / 2;
    return point(c.getX(), c.getY(), w);
  }

  /** Volume, mm3: area times the length at the section's centroid, exact for plane ends. */
  public double volumeMm3() {
    Vector2D c = section.centroid();
    return section.areaMm2() * (high.at(c.getX(), c.getY()) - low.at(c.getX(), c.getY()));
  }

  /** True inside and on the surface, within a slack. */
  public boolean contains(Vector3D point, double slackMm) {
    Vector3D local = sweep.into(point);
    double u = local.getX();
    double v = local.getY();
    return local.getZ() >= low.at(u, v) - slackMm
        && local.getZ() <= high.at(u, v) + slackMm
        && section.contains(new Vector2D(u, v), slackMm);
  }

  /** Distance from a point, 0 inside; for cut ends at most a little too large near their rim. */
  public double distance(Vector3D point) {
    double least = Double.MAX_VALUE;
    for (PieceReach piece : reaches) {
      least = Math.min(least, piece.nearest(point).distance(point));
    }
    return least;
  }
}
