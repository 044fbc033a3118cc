package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.WeldLine;
import org.counterpull.drawing.SectionSketch.Dimension;
import org.counterpull.drawing.SectionSketch.NameSide;
import org.counterpull.drawing.SectionSketch.Wall;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.markup.Markup;

/** Draws up the section of a joint from its shape, preparation and sizes. */
final class SectionSketches {
  static final Point UP = new Point(0, -1);
  static final Point DOWN = new Point(0, 1);
  static final Point LEFT = new Point(-1, 0);
  static final Point RIGHT = new Point(1, 0);

  private final JointPlan joint;
  private final RunPlan firstRun;
  private final Optional<RunPlan> secondRun;
  private final double firstMm;
  private final double secondMm;

  private SectionSketches(JointPlan joint) {
    this.joint = joint;
    firstRun = joint.runs().get(0);
    secondRun = otherSide(joint);
    firstMm = firstRun.line().firstWallMm();
    secondMm = firstRun.line().secondWallMm();
  }

  /** The section; empty for a joint that isn't welded. */
  static Optional<SectionSketch> of(JointPlan joint) {
    return joint.runs().isEmpty()
        ? Optional.empty()
        : Optional.of(new SectionSketches(joint).sketch());
  }

  /** The run on the other side of the joint: the one that opens most the other way. */
  private static Optional<RunPlan> otherSide(JointPlan joint) {
    WeldLine line = joint.runs().get(0).line();
    return joint.runs().stream()
        .skip(1)
        .filter(r -> facing(line, r) < 0.25)
        .min(Comparator.comparingDouble(r -> facing(line, r)));
  }

  private static double facing(WeldLine line, RunPlan other) {
    return line.opening().dotProduct(other.line().opening());
  }

  private SectionSketch sketch() {
    return switch (firstRun.line().shape()) {
      case FLARE_BEVEL -> flareBevel();
      case FLARE_V -> flareV();
      case OUTSIDE_CORNER -> outsideCorner();
      case PLUG -> new PlugSketch(joint, firstRun).sketch();
      case BUTT ->
          switch (joint.contact().form()) {
            case TEE -> new TeeSketch(joint, firstRun, secondRun).sketch();
            case BUTT, CORNER, LAP, EDGE ->
                new ButtSketch(joint, firstRun, secondRun, Math.min(firstMm, secondMm)).sketch();
          };
      case FILLET ->
          switch (joint.contact().form()) {
            case LAP, EDGE -> lap();
            case TEE, CORNER, BUTT -> new TeeSketch(joint, firstRun, secondRun).sketch();
          };
    };
  }

  /** Leg of a run: as sized, else that of an even fillet of its metal. */
  static double legMm(JointPlan joint, RunPlan run) {
    double area = run.passes().stream().mapToDouble(p -> p.area().value()).sum();
    return joint.size().leg().map(c -> c.value()).orElse(Math.sqrt(2 * area));
  }

  private SectionSketch lap() {
    double leg = Math.min(legMm(joint, firstRun), firstMm);
    double reach = Math.max(2.4 * leg, 1.2 * secondMm) + 4;
    double back = secondRun.isPresent() ? 2.2 * firstMm + 10 : reach;
    List<Bay> bays = new ArrayList<>();
    bays.add(lapBay(1, 0, leg, firstRun));
    secondRun.ifPresent(run -> bays.add(lapBay(-1, -back, leg, run)));
    double left = secondRun.isPresent() ? -back - reach : -back;
    double lower = secondRun.isPresent() ? left : -0.55 * back;
    List<Wall> walls =
        List.of(
            Wall.solid(
                second(),
                new Point(lower, secondMm),
                NameSide.BELOW,
                lower,
                0,
                reach,
                0,
                reach,
                secondMm,
                lower,
                secondMm),
            Wall.solid(
                first(),
                new Point(-back / 2, -firstMm),
                NameSide.ABOVE,
                -back,
                -firstMm,
                0,
                -firstMm,
                0,
                0,
                -back,
                0));
    return new SectionSketch(
        walls,
        bays,
        List.of(
            new Dimension(
                new Point(reach, 0), new Point(reach, secondMm), RIGHT, 1.2, mm("t", secondMm)),
            new Dimension(
                new Point(-back, -firstMm), new Point(-back, 0), LEFT, 1.2, mm("t", firstMm)),
            new Dimension(new Point(0, 0), new Point(leg, 0), DOWN, 1.3, mm("z", leg))));
  }

  private static Bay lapBay(int sign, double at, double leg, RunPlan run) {
    Point low = new Point(at + sign * leg, 0);
    Point high = new Point(at, -leg);
    return new Bay(
        new Region(List.of(new Point(at, 0), low, high)),
        new Point(sign, -1).unit(),
        low,
        high,
        run);
  }

  private SectionSketch outsideCorner() {
    double reach = 2.2 * Math.max(firstMm, secondMm) + 6;
    Point from = new Point(firstMm, secondMm);
    Point to = new Point(0, 0);
    Bay bay =
        new Bay(
            new Region(List.of(new Point(0, secondMm), from, to)),
            new Point(secondMm, -firstMm).unit(),
            from,
            to,
            firstRun);
    List<Wall> walls =
        List.of(
            Wall.solid(
                second(),
                new Point(-reach, 0),
                NameSide.ABOVE,
                -reach,
                0,
                0,
                0,
                0,
                secondMm,
                -reach,
                secondMm),
            Wall.solid(
                first(),
                new Point(firstMm, secondMm + 0.6 * reach),
                NameSide.RIGHT,
                0,
                secondMm,
                firstMm,
                secondMm,
                firstMm,
                secondMm + reach,
                0,
                secondMm + reach));
    return new SectionSketch(
        walls,
        List.of(bay),
        List.of(
            new Dimension(
                new Point(-reach, 0), new Point(-reach, secondMm), LEFT, 1.2, mm("t", secondMm)),
            new Dimension(
                new Point(0, secondMm + reach),
                new Point(firstMm, secondMm + reach),
                DOWN,
                1.2,
                mm("t", firstMm))));
  }

  private SectionSketch flareBevel() {
    double radius = firstRun.line().flareRadiusMm().orElse(firstMm);
    double gap = firstRun.line().gapMm();
    boolean roundIsFirst = firstMm < 2 * radius;
    double wall = Math.min(roundIsFirst ? firstMm : secondMm, radius);
    double flat = roundIsFirst ? secondMm : firstMm;
    Point centre = new Point(0, -gap - radius);
    List<Bay> bays = new ArrayList<>();
    bays.add(flareBay(1, radius, centre, firstRun));
    secondRun.ifPresent(run -> bays.add(flareBay(-1, radius, centre, run)));
    double reach = 1.25 * radius + 3;
    List<Wall> walls =
        List.of(
            Wall.solid(
                second(),
                new Point(-reach, flat),
                NameSide.BELOW,
                -reach,
                0,
                reach,
                0,
                reach,
                flat,
                -reach,
                flat),
            round(first(), centre, radius, wall));
    List<Dimension> dimensions = new ArrayList<>();
    dimensions.add(
        new Dimension(new Point(reach, 0), new Point(reach, flat), RIGHT, 1.2, mm("t", flat)));
    dimensions.add(
        new Dimension(
            new Point(-radius, centre.y() - radius),
            new Point(radius, centre.y() - radius),
            UP,
            2,
            mm("diameter", 2 * radius)));
    return new SectionSketch(walls, bays, dimensions);
  }

  private static Bay flareBay(int sign, double radius, Point centre, RunPlan run) {
    List<Point> corners = new ArrayList<>();
    Point flat = new Point(sign * radius, 0);
    corners.add(new Point(0, 0));
    corners.add(flat);
    for (int i = 0; i <= 18; i++) {
      double angle = Math.PI / 2 * i / 18;
      corners.add(
          centre.plus(new Point(sign * radius * Math.cos(angle), radius * Math.sin(angle))));
    }
    return new Bay(new Region(corners), new Point(sign, 0), flat, corners.get(2), run);
  }

  private SectionSketch flareV() {
    double radius = firstRun.line().flareRadiusMm().orElse(firstMm);
    double gap = firstRun.line().gapMm();
    Point left = new Point(-gap / 2 - radius, 0);
    Point right = new Point(gap / 2 + radius, 0);
    List<Bay> bays = new ArrayList<>();
    bays.add(flareVBay(-1, radius, left, right, firstRun));
    secondRun.ifPresent(run -> bays.add(flareVBay(1, radius, left, right, run)));
    return new SectionSketch(
        List.of(
            round(first(), left, radius, Math.min(firstMm, radius)),
            round(second(), right, radius, Math.min(secondMm, radius))),
        bays,
        List.of());
  }

  private static Bay flareVBay(int down, double radius, Point left, Point right, RunPlan run) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i <= 18; i++) {
      double angle = Math.PI / 2 * (1 - i / 18.0);
      corners.add(left.plus(new Point(radius * Math.cos(angle), down * radius * Math.sin(angle))));
    }
    for (int i = 0; i <= 18; i++) {
      double angle = Math.PI / 2 * i / 18;
      corners.add(
          right.plus(new Point(-radius * Math.cos(angle), down * radius * Math.sin(angle))));
    }
    return new Bay(
        new Region(corners),
        new Point(0, down),
        corners.get(corners.size() - 1),
        corners.get(0),
        run);
  }

  private static Wall round(String name, Point centre, double radius, double wall) {
    List<Point> outside = circle(centre, radius);
    List<Point> bore = wall < radius ? circle(centre, radius - wall) : List.of();
    return new Wall(
        new Region(outside),
        bore,
        name,
        new Point(centre.x(), centre.y() - radius),
        NameSide.ABOVE);
  }

  private static List<Point> circle(Point centre, double radius) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      points.add(centre.plus(Point.polar(radius, 2 * Math.PI * i / 60)));
    }
    return points;
  }

  private String first() {
    return joint.joint().first();
  }

  private String second() {
    return joint.joint().second();
  }

  static String mm(String what, double mm) {
    return what + " " + Markup.number(Math.round(mm * 10) / 10.0);
  }
}
