package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.counterpull.drawing.SectionSketch.Dimension;
import org.counterpull.drawing.SectionSketch.Wall;
import org.counterpull.jointplan.BarCones;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;

/** Two edges that face each other, prepared or not; the first side is on top. */
final class ButtSketch {
  private static final double BACKING_MM = 6;

  private final JointPlan joint;
  private final RunPlan firstRun;
  private final Optional<RunPlan> secondRun;
  private final double t;
  private final double half;
  private final double firstDepth;
  private final double secondDepth;
  private final double lean;
  private final boolean cones;
  private final boolean leftCut;
  private final boolean rightCut;
  private final double rootRadius;

  ButtSketch(JointPlan joint, RunPlan firstRun, Optional<RunPlan> secondRun, double thicknessMm) {
    this.joint = joint;
    this.firstRun = firstRun;
    this.secondRun =
        BarCones.meet(joint.contact(), firstRun.line()) ? Optional.of(firstRun) : secondRun;
    t = thicknessMm;
    EdgePreparation p = joint.preparation();
    half = p.rootGapMm() / 2;
    firstDepth = Math.min(p.firstDepthMm(), t);
    cones = BarCones.meet(joint.contact(), firstRun.line());
    double behind = cones ? firstDepth : p.secondDepthMm();
    secondDepth = Math.min(behind, Math.max(0, t - firstDepth));
    double angle = Math.toRadians(p.angleDeg());
    boolean left = p.bevelledPart().isEmpty() || p.bevelledPart().equals(joint.joint().first());
    boolean right = p.bevelledPart().isEmpty() || !left;
    boolean included = p.kind().angleIsIncluded();
    lean = included ? angle / 2 : angle;
    leftCut = left && firstDepth > 0;
    rightCut = right && firstDepth > 0;
    rootRadius = p.rootRadiusMm();
  }

  SectionSketch sketch() {
    double reach = half + edge(firstDepth + 1).get(0).x() + 0.6 * t + 4;
    List<Wall> walls =
        new ArrayList<>(List.of(plate(-1, leftCut, reach), plate(1, rightCut, reach)));
    if (backed()) {
      walls.add(backing());
    }
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

  private List<Point> edge(double depth) {
    return CutEdge.corners(depth, lean, rootRadius);
  }

  private Wall plate(int side, boolean cut, double reach) {
    List<Point> corners = new ArrayList<>();
    corners.add(new Point(side * reach, 0));
    if (cut) {
      edge(firstDepth).forEach(p -> corners.add(new Point(side * (half + p.x()), p.y())));
    } else {
      corners.add(new Point(side * half, 0));
    }
    if (cut && secondDepth > 0) {
      List<Point> second = new ArrayList<>(edge(secondDepth));
      Collections.reverse(second);
      second.forEach(p -> corners.add(new Point(side * (half + p.x()), t - p.y())));
    } else {
      corners.add(new Point(side * half, t));
    }
    corners.add(new Point(side * reach, t));
    String name = side < 0 ? joint.joint().first() : joint.joint().second();
    return new Wall(
        new Region(corners),
        List.of(),
        name,
        new Point(side * reach * 0.62, backed() ? 0 : t),
        backed() ? SectionSketch.NameSide.ABOVE : SectionSketch.NameSide.BELOW);
  }

  private boolean backed() {
    return !joint.preparation().backing().isEmpty();
  }

  private Wall backing() {
    double wide = half + 10;
    return Wall.solid(
        "backing",
        new Point(-wide, t + BACKING_MM),
        SectionSketch.NameSide.BELOW,
        -wide,
        t,
        wide,
        t,
        wide,
        t + BACKING_MM,
        -wide,
        t + BACKING_MM);
  }

  /** The groove of one side; the first takes in the gap between the root faces. */
  private Bay groove(double depth, double faceY, int down, RunPlan run) {
    boolean tight = half < 1e-6;
    double face = down < 0 && !tight ? joint.preparation().rootFaceMm() : 0;
    List<Point> edge = edge(depth);
    List<Point> right = new ArrayList<>();
    List<Point> left = new ArrayList<>();
    for (Point p : edge) {
      right.add(new Point(half + (rightCut ? p.x() : 0), faceY - down * p.y()));
      left.add(new Point(-half - (leftCut ? p.x() : 0), faceY - down * p.y()));
    }
    if (face > 0) {
      right.add(new Point(half, faceY - down * (depth + face)));
      left.add(new Point(-half, faceY - down * (depth + face)));
    }
    Point from = right.get(0);
    Point to = left.get(0);
    List<Point> corners = new ArrayList<>(List.of(from));
    corners.addAll(left);
    Collections.reverse(right);
    corners.addAll(right.subList(0, right.size() - 1));
    return new Bay(new Region(distinct(corners)), new Point(0, down), to, from, run);
  }

  private static List<Point> distinct(List<Point> corners) {
    List<Point> kept = new ArrayList<>();
    for (Point corner : corners) {
      if (kept.isEmpty() || kept.get(kept.size() - 1).distance(corner) > 1e-9) {
        kept.add(corner);
      }
    }
    return kept;
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
              new Point(-half, backed() ? t + BACKING_MM : t),
              new Point(half, backed() ? t + BACKING_MM : t),
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
