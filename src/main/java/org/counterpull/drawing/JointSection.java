package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.markup.Markup;

/**
 * The section of a joint in true proportion: the walls, their preparation with measures, and the
 * beads where they lie, numbered as they are welded.
 */
public final class JointSection {
  private static final double WIDTH = 340;
  private static final double MOST_HEIGHT = 250;
  private static final double RIM_X = 58;
  private static final double RIM_Y = 52;
  private static final double TEXT = 14;

  private final SectionSketch sketch;
  private final JointPlan joint;
  private final double scale;
  private final double height;
  private final Point shift;

  private JointSection(JointPlan joint, SectionSketch sketch) {
    this.joint = joint;
    this.sketch = sketch;
    List<Point> points = new ArrayList<>();
    sketch.walls().forEach(w -> points.addAll(w.outline().corners()));
    sketch.bays().forEach(b -> b.beads().forEach(x -> points.addAll(x.shape().corners())));
    double left = points.stream().mapToDouble(Point::x).min().orElse(0);
    double right = points.stream().mapToDouble(Point::x).max().orElse(1);
    double top = points.stream().mapToDouble(Point::y).min().orElse(0);
    double bottom = points.stream().mapToDouble(Point::y).max().orElse(1);
    scale = Math.min((WIDTH - 2 * RIM_X) / (right - left), MOST_HEIGHT / (bottom - top));
    height = scale * (bottom - top) + 2 * RIM_Y;
    double spare = WIDTH - 2 * RIM_X - scale * (right - left);
    shift = new Point(RIM_X + spare / 2 - scale * left, RIM_Y - scale * top);
  }

  /**
   * The drawing; empty for a joint that isn't welded.
   *
   * @param number of the joint on the plan; keeps the names inside the drawing apart
   */
  public static Optional<Markup> of(JointPlan joint, int number) {
    return SectionSketches.of(joint).map(s -> new JointSection(joint, s).draw("cut" + number));
  }

  private Markup draw(String id) {
    Sheet sheet =
        new Sheet(
            "joint-section",
            WIDTH,
            height,
            "Section of joint " + joint.joint().name(),
            joint.preparation().kind().words()
                + " between "
                + joint.joint().first()
                + " and "
                + joint.joint().second()
                + ", beads numbered in the order of welding");
    for (int i = 0; i < 2; i++) {
      sheet.hatch(id + "-" + i, 7, i == 0 ? 45 : -45, "#fff", 0.7);
    }
    for (int i = 0; i < sketch.walls().size(); i++) {
      wall(sheet, sketch.walls().get(i), "url(#" + id + "-" + i % 2 + ")");
    }
    sketch.bays().forEach(bay -> bay.beads().forEach(bead -> bead(sheet, bead)));
    sketch.walls().forEach(wall -> name(sheet, wall));
    sketch.dimensions().forEach(d -> dimension(sheet, d));
    return sheet.done();
  }

  private Point at(Point mm) {
    return mm.times(scale).plus(shift);
  }

  private void wall(Sheet sheet, SectionSketch.Wall wall, String fill) {
    sheet.polygon(wall.outline().corners().stream().map(this::at).toList(), fill, Sheet.INK, 1.3);
    if (!wall.bore().isEmpty()) {
      sheet.polygon(wall.bore().stream().map(this::at).toList(), "#fff", Sheet.INK, 1.3);
    }
  }

  private void bead(Sheet sheet, Bay.Bead bead) {
    List<Point> corners = bead.shape().corners().stream().map(this::at).toList();
    sheet.polygon(corners, "#e2e2e2", Sheet.INK, 1.6);
    Point middle = at(bead.shape().centroid());
    double room = Math.sqrt(bead.shape().areaMm2()) * scale;
    double size = Math.max(9, Math.min(TEXT, room * 0.75));
    sheet.bold(
        new Point(middle.x(), middle.y() + size * 0.36),
        Integer.toString(bead.pass()),
        size,
        "middle");
  }

  private void name(Sheet sheet, SectionSketch.Wall wall) {
    Point at = at(wall.nameAt());
    boolean right = wall.nameSide() == SectionSketch.NameSide.RIGHT;
    String text = shortened(wall.name(), right ? WIDTH - at.x() - 12 : WIDTH / 2 - 8);
    double half = Sheet.textWidth(text, TEXT) / 2;
    double y =
        switch (wall.nameSide()) {
          case ABOVE -> at.y() - 6;
          case BELOW -> at.y() + TEXT + 4;
          case RIGHT -> at.y() + TEXT * 0.36;
        };
    double x = right ? at.x() + 8 + half : Math.max(half + 4, Math.min(at.x(), WIDTH - half - 4));
    sheet.text(new Point(x, y), text, TEXT, "middle", Sheet.INK);
  }

  private static String shortened(String text, double wide) {
    int most = Math.max(4, (int) (wide / Sheet.textWidth("x", TEXT)));
    return text.length() <= most ? text : text.substring(0, most - 1) + "\u2026";
  }

  private void dimension(Sheet sheet, SectionSketch.Dimension d) {
    Point off = d.aside().times(d.far() * TEXT);
    Point from = at(d.from()).plus(off);
    Point to = at(d.to()).plus(off);
    if (d.far() > 0) {
      Stream.of(d.from(), d.to())
          .forEach(
              p ->
                  sheet.line(
                      at(p).plus(d.aside().times(3)),
                      at(p).plus(off).plus(d.aside().times(3)),
                      Sheet.INK,
                      0.7));
    }
    sheet.line(from, to, Sheet.INK, 0.9);
    double size = Math.min(6, from.distance(to) / 2.2);
    sheet.arrowHead(from, from.minus(to), size, Sheet.INK);
    sheet.arrowHead(to, to.minus(from), size, Sheet.INK);
    Point middle = from.plus(to).times(0.5);
    boolean beside = Math.abs(d.aside().x()) > 0.5;
    Point text =
        beside
            ? middle.plus(d.aside().times(5)).plus(new Point(0, TEXT * 0.36))
            : middle.plus(new Point(0, d.aside().y() > 0 ? TEXT + 1 : -4));
    String anchor = beside ? (d.aside().x() > 0 ? "start" : "end") : "middle";
    sheet.text(text, d.text(), TEXT, anchor, Sheet.INK);
  }
}
