package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.drawing.SectionSketch.Dimension;
import org.counterpull.drawing.SectionSketch.Wall;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;

/** Two edges that face each other, prepared or not; the first side is on top. */
final class ButtSketch {
  /** A root radius to draw where the preparation has one; the plan states no radius. */
  private static final double ROOT_RADIUS_MM = 6;

  private final JointPlan joint;
  private final RunPlan firstRun;
  private final Optional<RunPlan> secondRun;
  private final double t;
  private final double half;
  private final double firstDepth;
  private final double secondDepth;
  private final double leftSlope;
  private final double rightSlope;
  private final double rootRadius;

  ButtSketch(JointPlan joint, RunPlan firstRun, Optional<RunPlan> secondRun, double thicknessMm) {
    this.joint = joint;
    this.firstRun = firstRun;
    this.secondRun = secondRun;
    t = thicknessMm;
    EdgePreparation p = joint.preparation();
    half = p.rootGapMm() / 2;
    firstDepth = Math.min(p.firstDepthMm(), t);
    secondDepth = Math.min(p.secondDepthMm(), t - firstDepth);
    double angle = Math.toRadians(p.angleDeg());
    boolean left = p.bevelledPart().isEmpty() || p.bevelledPart().equals(joint.joint().first());
    boolean right = p.bevelledPart().isEmpty() || !left;
    boolean included =
        switch (p.kind()) {
          case V, DOUBLE_V -> true;
          case FILLET, SQUARE, BEVEL, DOUBLE_BEVEL, U, J, FLARE_BEVEL, FLARE_V -> false;
        };
    leftSlope = left ? Math.tan(included ? angle / 2 : angle) : 0;
    rightSlope = right ? Math.tan(included ? angle / 2 : angle) : 0;
    rootRadius =
        switch (p.kind()) {
          case U, J -> Math.min(ROOT_RADIUS_MM, firstDepth / 2);
          case FILLET, SQUARE, V, DOUBLE_V, BEVEL, DOUBLE_BEVEL, FLARE_BEVEL, FLARE_V -> 0;
        };
  }

  SectionSketch sketch() {
    double reach = half + (firstDepth + 1) * Math.max(leftSlope, rightSlope) + 0.6 * t + 4;
    List<Wall> walls = List.of(plate(-1, leftSlope, reach), plate(1, rightSlope, reach));
    List<Bay> bays = new ArrayList<>();
    if (firstDepth <= 0) {
      bays.add(square(-1, firstRun));
      secondRun.ifPresent(run -> bays.add(square(1, run)));
    } else {
      bays.add(groove(firstDepth, 0, -1, firstRun));
      secondRun.ifPresent(
          run -> bays.add(secondDepth > 0 ? groove(secondDepth, t, 1, run) : square(1, run)));
    }
    return new SectionSketch(walls, bays, dimensions(reach));
  }

  private Wall plate(int side, double slope, double reach) {
    boolean bevelled = slope > 0;
    double radius = bevelled ? rootRadius : 0;
    List<Point> corners = new ArrayList<>();
    corners.add(new Point(side * reach, 0));
    corners.add(new Point(side * (half + radius + firstDepth * slope), 0));
    if (radius > 0) {
      corners.add(new Point(side * (half + radius), firstDepth - radius));
      corners.add(new Point(side * (half + radius * 0.3), firstDepth - radius * 0.3));
    }
    corners.add(new Point(side * half, firstDepth));
    corners.add(new Point(side * half, t - secondDepth));
    corners.add(new Point(side * (half + secondDepth * slope), t));
    corners.add(new Point(side * reach, t));
    String name = side < 0 ? joint.joint().first() : joint.joint().second();
    return new Wall(
        new Region(corners),
        List.of(),
        name,
        new Point(side * reach * 0.62, t),
        SectionSketch.NameSide.BELOW);
  }

  /** The groove of one side; it takes in the gap down to the middle of the root face. */
  private Bay groove(double depth, double faceY, int down, RunPlan run) {
    double rootY = faceY - down * depth;
    double face = joint.preparation().rootFaceMm();
    boolean alone = secondDepth <= 0;
    double bottom = rootY - down * (alone ? face : face / 2);
    double leftRadius = leftSlope > 0 ? rootRadius : 0;
    double rightRadius = rightSlope > 0 ? rootRadius : 0;
    Point from = new Point(half + rightRadius + depth * rightSlope, faceY);
    Point to = new Point(-half - leftRadius - depth * leftSlope, faceY);
    List<Point> corners = new ArrayList<>(List.of(from, to));
    if (leftRadius > 0) {
      corners.add(new Point(-half - leftRadius, rootY + down * leftRadius));
    }
    corners.add(new Point(-half, rootY));
    corners.add(new Point(-half, bottom));
    corners.add(new Point(half, bottom));
    corners.add(new Point(half, rootY));
    if (rightRadius > 0) {
      corners.add(new Point(half + rightRadius, rootY + down * rightRadius));
    }
    return new Bay(new Region(corners), new Point(0, down), to, from, run);
  }

  /** Without a groove: the zone that is melted, as wide as the bead and as deep as the throat. */
  private Bay square(int down, RunPlan run) {
    double area = run.passes().stream().mapToDouble(p -> p.area().value()).sum();
    double most = secondRun.isPresent() ? 0.55 * t : t;
    double depth = Math.min(most, Math.max(0.3 * t, joint.size().throat().value()));
    double wide = Math.max(half + 0.5, Math.sqrt(area));
    double faceY = down < 0 ? 0 : t;
    double rootY = faceY - down * depth;
    Point from = new Point(-wide, faceY);
    Point to = new Point(wide, faceY);
    return new Bay(
        new Region(
            List.of(from, to, new Point(0.35 * wide, rootY), new Point(-0.35 * wide, rootY))),
        new Point(0, down),
        from,
        to,
        run);
  }

  private List<Dimension> dimensions(double reach) {
    List<Dimension> dimensions = new ArrayList<>();
    Point aside = SectionSketches.LEFT;
    dimensions.add(
        new Dimension(
            new Point(-reach, 0), new Point(-reach, t), aside, 1.2, SectionSketches.mm("t", t)));
    if (firstDepth > 0) {
      dimensions.add(right(reach, 0, firstDepth, 1.2, "h"));
    }
    if (joint.preparation().rootFaceMm() > 0) {
      dimensions.add(right(reach, firstDepth, t - secondDepth, 1.2, "c"));
    }
    if (secondDepth > 0) {
      dimensions.add(right(reach, t - secondDepth, t, 1.2, "h"));
    }
    if (half > 0) {
      dimensions.add(
          new Dimension(
              new Point(-half, t),
              new Point(half, t),
              SectionSketches.DOWN,
              2.6,
              SectionSketches.mm("b", 2 * half)));
    }
    return dimensions;
  }

  private static Dimension right(double x, double from, double to, double far, String what) {
    return new Dimension(
        new Point(x, from),
        new Point(x, to),
        SectionSketches.RIGHT,
        far,
        SectionSketches.mm(what, to - from));
  }
}
