package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.drawing.SectionSketch.Dimension;
import org.counterpull.drawing.SectionSketch.NameSide;
import org.counterpull.drawing.SectionSketch.Wall;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Joint.Holes;

/** A hole in the upper of two parts that lie on each other, filled. */
final class PlugSketch {
  /** A slight cap. */
  private static final double CAP_MM2 = 8;

  private final JointPlan joint;
  private final RunPlan run;

  PlugSketch(JointPlan joint, RunPlan run) {
    this.joint = joint;
    this.run = run;
  }

  SectionSketch sketch() {
    double half = joint.joint().holes().map(Holes::widthMm).orElse(0.0) / 2;
    double upper = run.line().firstWallMm();
    double lower = run.line().secondWallMm();
    double reach = 2.2 * half + 0.5 * upper + 4;
    List<Wall> walls = new ArrayList<>();
    walls.add(rectangle(joint.joint().first(), -reach, -upper, -half, 0, NameSide.ABOVE));
    walls.add(rectangle("", half, -upper, reach, 0, NameSide.ABOVE));
    walls.add(rectangle(joint.joint().second(), -reach, 0, reach, lower, NameSide.BELOW));
    double top = -Math.min(upper, fillMm());
    Point from = new Point(-half, top);
    Point to = new Point(half, top);
    Bay bay =
        new Bay(
            new Region(List.of(from, to, new Point(half, 0), new Point(-half, 0))),
            new Point(0, -1),
            from,
            to,
            across(2 * half * -top));
    return new SectionSketch(
        walls,
        List.of(bay),
        List.of(
            new Dimension(
                new Point(-half, -upper),
                new Point(half, -upper),
                SectionSketches.UP,
                1.6,
                SectionSketches.mm("d", 2 * half)),
            new Dimension(
                new Point(reach, -upper),
                new Point(reach, 0),
                SectionSketches.RIGHT,
                1.2,
                SectionSketches.mm("t", upper)),
            new Dimension(
                new Point(reach, 0),
                new Point(reach, lower),
                SectionSketches.RIGHT,
                1.2,
                SectionSketches.mm("t", lower))));
  }

  /** Depth of the fill: the beads' metal over the width that a line of the weld stands for. */
  private double fillMm() {
    return metalMm2() / joint.size().throat().value();
  }

  private double metalMm2() {
    return run.passes().stream().mapToDouble(p -> p.area().value()).sum();
  }

  /** A run goes round the hole: cut through, each bead shows with the share that it fills. */
  private RunPlan across(double roomMm2) {
    double scale = (roomMm2 + CAP_MM2) / metalMm2();
    return run.withPasses(
        run.passes().stream()
            .map(p -> p.withArea(p.area().formula().result(scale * p.area().value())))
            .toList());
  }

  private static Wall rectangle(
      String name, double left, double top, double right, double bottom, NameSide side) {
    double y = side == NameSide.BELOW ? bottom : top;
    return Wall.solid(
        name, new Point(left, y), side, left, top, right, top, right, bottom, left, bottom);
  }
}
