package org.counterpull.drawing;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.counterpull.markup.Markup;
import org.counterpull.swing.SwingResult;
import org.counterpull.swing.SwingResult.Drive;
import org.counterpull.swing.SwingResult.Position;

/** Lever arm and force of a cylinder over a swing, one graph above the other. */
public final class SwingGraph {
  private static final double LEFT = 64;
  private static final double PLOT = 150;
  private static final double GAP = 64;
  private static final double TOP = 30;
  private static final double TEXT = 14;
  private static final String THERE = "#00507a";

  private final List<Position> positions;
  private final double width;
  private final double fromDeg;
  private final double toDeg;

  private SwingGraph(SwingResult result, double widthPx) {
    positions = result.positions();
    width = widthPx;
    fromDeg = Math.min(result.swing().fromDeg(), result.swing().toDeg());
    toDeg = Math.max(result.swing().fromDeg(), result.swing().toDeg());
  }

  /** The drawing; the swing has a cylinder. */
  public static Markup of(SwingResult result, double widthPx) {
    return new SwingGraph(result, widthPx).draw();
  }

  private Markup draw() {
    Sheet sheet =
        new Sheet(
            "swing-graph",
            width,
            TOP + 2 * PLOT + GAP + 60,
            "Lever arm and force",
            "Over the angle of the swing: lever arm in mm; force that the weight needs and force that"
                + " the cylinder has, in kN, pushing up and pulling down.");
    plot(sheet, TOP, "lever arm, mm", d -> d.armMm().value(), List.of());
    plot(
        sheet,
        TOP + PLOT + GAP,
        "force, kN: needed (black), there (dashed)",
        d -> d.neededN().value() / 1000,
        List.of(d -> d.pushN().value() / 1000, d -> -d.pullN().value() / 1000));
    sheet.text(new Point(width - 20, TOP + 2 * PLOT + GAP + 46), "degrees", TEXT, "end", Sheet.INK);
    return sheet.done();
  }

  private double x(double deg) {
    return LEFT + (width - LEFT - 24) * (deg - fromDeg) / (toDeg - fromDeg);
  }

  private void plot(
      Sheet sheet,
      double top,
      String title,
      ToDoubleFunction<Drive> main,
      List<ToDoubleFunction<Drive>> limits) {
    double low = 0;
    double high = 0;
    for (Position position : positions) {
      Drive drive = position.drive().orElseThrow();
      low = Math.min(low, main.applyAsDouble(drive));
      high = Math.max(high, main.applyAsDouble(drive));
      for (ToDoubleFunction<Drive> limit : limits) {
        low = Math.min(low, limit.applyAsDouble(drive));
        high = Math.max(high, limit.applyAsDouble(drive));
      }
    }
    double span = Math.max(1e-9, high - low);
    double bottom = low - 0.05 * span;
    double scale = PLOT / (1.1 * span);
    sheet.bold(new Point(LEFT, top - 10), title, TEXT, "start");
    for (double value :
        low < 0 && high > 0 ? new double[] {low, 0, high} : new double[] {low, high}) {
      double y = top + PLOT - scale * (value - bottom);
      sheet.line(new Point(LEFT, y), new Point(x(toDeg), y), "#d4d4d4", 1);
      sheet.text(new Point(LEFT - 8, y + 5), figure(value), TEXT, "end", Sheet.INK);
    }
    curve(sheet, top + PLOT, scale, bottom, main, Sheet.INK, 2, "");
    for (ToDoubleFunction<Drive> limit : limits) {
      curve(sheet, top + PLOT, scale, bottom, limit, THERE, 1.6, "8 5");
    }
    sheet.line(new Point(LEFT, top + PLOT), new Point(x(toDeg), top + PLOT), Sheet.INK, 1.2);
    for (int i = 0; i < positions.size(); i += 2) {
      double deg = positions.get(i).angleDeg();
      sheet.text(
          new Point(x(deg), top + PLOT + 6 + TEXT),
          String.format(Locale.ROOT, "%.0f", deg),
          TEXT,
          "middle",
          Sheet.INK);
    }
  }

  private void curve(
      Sheet sheet,
      double base,
      double scale,
      double bottom,
      ToDoubleFunction<Drive> value,
      String colour,
      double stroke,
      String dashes) {
    List<Point> points =
        positions.stream()
            .map(
                p ->
                    new Point(
                        x(p.angleDeg()),
                        base - scale * (value.applyAsDouble(p.drive().orElseThrow()) - bottom)))
            .toList();
    sheet.polyline(points, colour, stroke, dashes);
  }

  private static String figure(double value) {
    return Math.abs(value) >= 100
        ? String.format(Locale.ROOT, "%.0f", value)
        : String.format(Locale.ROOT, "%.1f", value);
  }
}
