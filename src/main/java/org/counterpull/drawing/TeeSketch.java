package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.counterpull.drawing.SectionSketch.Dimension;
import org.counterpull.drawing.SectionSketch.NameSide;
import org.counterpull.drawing.SectionSketch.Wall;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;

/** A part that stands on another, square or leaning; the first side is on the right. */
final class TeeSketch {
  /** Less than this off square is drawn square, degrees. */
  private static final double SQUARE_WITHIN_DEG = 2;

  private final JointPlan joint;
  private final RunPlan firstRun;
  private final Optional<RunPlan> secondRun;
  private final double firstMm;
  private final double secondMm;

  TeeSketch(JointPlan joint, RunPlan firstRun, Optional<RunPlan> secondRun) {
    this.joint = joint;
    this.firstRun = firstRun;
    this.secondRun = secondRun;
    firstMm = firstRun.line().firstWallMm();
    secondMm = firstRun.line().secondWallMm();
  }

  private double legMm(RunPlan run) {
    return SectionSketches.legMm(joint, run);
  }

  SectionSketch sketch() {
    if (leans()) {
      return leaning();
    }
    double leg = legMm(firstRun);
    double half = firstMm / 2;
    double gap = joint.preparation().rootGapMm();
    double reach = half + 1.5 * leg + 6;
    double tall = Math.max(1.9 * leg, joint.preparation().firstDepthMm()) + 9;
    double firstDepth = Math.min(joint.preparation().firstDepthMm(), firstMm);
    double secondDepth =
        Math.min(joint.preparation().secondDepthMm(), Math.max(0, firstMm - firstDepth));
    List<Bay> bays = new ArrayList<>();
    bays.add(teeBay(1, half, firstDepth, gap, firstRun));
    secondRun.ifPresent(run -> bays.add(teeBay(-1, half, secondDepth, gap, run)));
    List<Point> web = new ArrayList<>(List.of(new Point(-half, -tall), new Point(half, -tall)));
    teeEdge(1, half, firstDepth, gap).forEach(web::add);
    List<Point> other = new ArrayList<>(teeEdge(-1, half, secondDepth, gap));
    Collections.reverse(other);
    web.addAll(other);
    List<Wall> walls =
        List.of(
            base(reach),
            new Wall(
                new Region(web),
                List.of(),
                joint.joint().first(),
                new Point(half, -0.86 * tall),
                NameSide.RIGHT));
    List<Dimension> dimensions = new ArrayList<>();
    dimensions.add(
        new Dimension(
            new Point(reach, 0),
            new Point(reach, secondMm),
            SectionSketches.RIGHT,
            1.2,
            SectionSketches.mm("t", secondMm)));
    dimensions.add(
        new Dimension(
            new Point(-half, -tall),
            new Point(half, -tall),
            SectionSketches.UP,
            1,
            SectionSketches.mm("t", firstMm)));
    if (joint.size().leg().isPresent()) {
      dimensions.add(
          new Dimension(
              new Point(half, 0),
              new Point(half + leg, 0),
              SectionSketches.DOWN,
              1.3,
              SectionSketches.mm("z", leg)));
    }
    if (firstDepth > 0) {
      dimensions.add(
          new Dimension(
              new Point(half - firstDepth, -tall),
              new Point(half, -tall),
              SectionSketches.UP,
              2.6,
              SectionSketches.mm("s", firstDepth)));
    }
    return new SectionSketch(walls, bays, dimensions);
  }

  /** The web's cut edge on one face, from the face to the root. */
  private List<Point> teeEdge(int sign, double half, double depth, double gap) {
    if (depth <= 0) {
      return List.of(new Point(sign * half, -gap));
    }
    double lean = Math.toRadians(joint.preparation().angleDeg());
    return CutEdge.corners(depth, lean, joint.preparation().rootRadiusMm()).stream()
        .map(p -> new Point(sign * (half - p.y()), -gap - p.x()))
        .toList();
  }

  /** The room of one side: the groove down to its root, and the fillet over it. */
  private Bay teeBay(int sign, double half, double depth, double gap, RunPlan run) {
    if (depth <= 0) {
      double leg = legMm(run);
      Point low = new Point(sign * (half + leg), 0);
      Point high = new Point(sign * half, -leg);
      return bay(List.of(new Point(sign * half, 0), low, high), sign, low, high, run);
    }
    List<Point> edge = new ArrayList<>(teeEdge(sign, half, depth, gap));
    double face = -edge.get(0).y();
    double leg = joint.size().leg().map(c -> c.value()).orElse(Math.min(10, 2 * half / 4));
    Point low = new Point(sign * (half + leg), 0);
    Point high = new Point(sign * half, -Math.max(leg, face + 0.3 * leg));
    List<Point> corners = new ArrayList<>(List.of(new Point(sign * (half - depth), 0), low, high));
    corners.addAll(edge);
    return bay(corners, sign, low, high, run);
  }

  private static Bay bay(List<Point> corners, int sign, Point low, Point high, RunPlan run) {
    Point outwards = high.minus(low).turned().unit();
    outwards = outwards.x() * sign > 0 ? outwards : outwards.times(-1);
    return new Bay(new Region(corners), outwards, low, high, run);
  }

  private boolean leans() {
    boolean cut = joint.preparation().firstDepthMm() > 0;
    return !cut && Math.abs(firstRun.line().dihedralDeg() - 90) > SQUARE_WITHIN_DEG;
  }

  /** Fillets between faces that are not square. */
  private SectionSketch leaning() {
    double deg = firstRun.line().dihedralDeg();
    double leg = legMm(firstRun);
    Point up = new Point(Math.cos(Math.toRadians(deg)), -Math.sin(Math.toRadians(deg)));
    double half = firstMm / 2 / Math.sin(Math.toRadians(deg));
    double tall = 2.2 * leg + 9;
    double reach = half + 2 * leg + tall * Math.abs(up.x()) + 6;
    Point right = new Point(half, 0);
    Point left = new Point(-half, 0);
    List<Bay> bays = new ArrayList<>();
    bays.add(leaningBay(1, right, up, firstRun));
    secondRun.ifPresent(run -> bays.add(leaningBay(-1, left, up, run)));
    Point top = right.plus(up.times(tall));
    Point topLeft = left.plus(up.times(tall));
    List<Wall> walls =
        List.of(
            base(reach),
            new Wall(
                new Region(List.of(left, right, top, topLeft)),
                List.of(),
                joint.joint().first(),
                right.plus(up.times(0.86 * tall)),
                NameSide.RIGHT));
    return new SectionSketch(
        walls,
        bays,
        List.of(
            new Dimension(
                new Point(reach, 0),
                new Point(reach, secondMm),
                SectionSketches.RIGHT,
                1.2,
                SectionSketches.mm("t", secondMm)),
            new Dimension(
                topLeft,
                top,
                SectionSketches.UP,
                1,
                SectionSketches.mm("t", firstMm) + ", " + Math.round(deg) + "\u00b0 on the right"),
            new Dimension(
                right,
                right.plus(new Point(leg, 0)),
                SectionSketches.DOWN,
                1.3,
                SectionSketches.mm("z", leg))));
  }

  private Bay leaningBay(int sign, Point root, Point up, RunPlan run) {
    double leg = legMm(run);
    Point low = root.plus(new Point(sign * leg, 0));
    Point high = root.plus(up.times(leg));
    return bay(List.of(root, low, high), sign, low, high, run);
  }

  /** The wall that goes on under the other, to both sides of it. */
  private Wall base(double reach) {
    return Wall.solid(
        joint.joint().second(),
        new Point(-reach, secondMm),
        NameSide.BELOW,
        -reach,
        0,
        reach,
        0,
        reach,
        secondMm,
        -reach,
        secondMm);
  }
}
