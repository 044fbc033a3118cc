package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.coupon.Coupon;
import org.counterpull.coupon.Measure;
import org.counterpull.markup.Markup;
import org.counterpull.quantity.Printed;

/** A test piece: end view, plan view with its marks, how its angle is read, and the bar. */
public final class CouponDrawing {
  private static final double WIDTH = 980;
  private static final double HEIGHT = 640;
  private static final double SMALL = 12;
  private static final double HEAD = 14;
  private static final String STEEL = "#dfe5ea";
  private static final String WELD = "#c2410c";
  private static final String BLUE = "#1d4ed8";

  private final Coupon coupon;
  private final Sheet sheet;

  private CouponDrawing(Coupon coupon) {
    this.coupon = coupon;
    sheet =
        new Sheet(
            "coupon",
            WIDTH,
            HEIGHT,
            "Test piece",
            "End view and plan view of the test piece with its marks, how its angle is read, and a"
                + " bar with a bead along its edge.");
  }

  /** The drawing. */
  public static Markup of(Coupon coupon) {
    CouponDrawing drawing = new CouponDrawing(coupon);
    drawing.endView();
    drawing.planView();
    drawing.angleReading();
    drawing.bar();
    return drawing.sheet.done();
  }

  private double h() {
    return coupon.pull().plateMm();
  }

  private void endView() {
    double scale = 300 / coupon.plateWidthMm();
    double left = 50;
    double top = 210;
    double middle = left + 150;
    double thick = Math.max(7, h() * scale);
    sheet.bold(new Point(left, 30), "1  End view", HEAD, "start");
    if (coupon.butt()) {
      sheet.box(new Point(left, top), 148, thick, 0, STEEL, Sheet.INK);
      sheet.box(new Point(middle + 2, top), 148, thick, 0, STEEL, Sheet.INK);
      sheet.polygon(
          List.of(
              new Point(middle - 7, top - 2),
              new Point(middle + 7, top - 2),
              new Point(middle, top + thick)),
          WELD,
          WELD,
          1);
    } else {
      double web = Math.max(5, coupon.pull().otherMm() * scale);
      double height = coupon.uprightHeightMm() * scale;
      sheet.box(new Point(left, top), 300, thick, 0, STEEL, Sheet.INK);
      sheet.box(new Point(middle - web / 2, top - height), web, height, 0, STEEL, Sheet.INK);
      double leg = Math.max(9, legMm() * scale);
      double x = middle + web / 2;
      sheet.polygon(
          List.of(new Point(x, top), new Point(x + leg, top), new Point(x, top - leg)),
          WELD,
          WELD,
          1);
      sheet.text(
          new Point(x + leg + 6, top - 10),
          "weld of about " + Printed.number(legMm(), 2) + " mm, this side only",
          SMALL,
          "start",
          WELD);
      dimensionUp(middle - web / 2 - 16, top - height, top, mm(coupon.uprightHeightMm()));
      sheet.text(
          new Point(middle + web / 2 + 8, top - height + 12),
          mm(coupon.pull().otherMm()) + " thick",
          SMALL,
          "start",
          Sheet.INK);
    }
    dimension(left, left + 300, top + thick + 18, mm(coupon.plateWidthMm()));
    sheet.text(new Point(left, top - 8), mm(h()) + " thick", SMALL, "start", Sheet.INK);
  }

  private double legMm() {
    double area = coupon.run().weldMetalMm3() / Math.max(1, coupon.run().weldedMm());
    return Math.sqrt(2 * area);
  }

  private void planView() {
    double scale = 1.5;
    double left = 450;
    double top = 60;
    double length = coupon.lengthMm() * scale;
    double width = Math.min(200, coupon.plateWidthMm() * scale);
    double middle = top + width / 2;
    sheet.bold(new Point(left, 30), "2  From above: weld, tacks, marks", HEAD, "start");
    sheet.box(new Point(left, top), length, width, 0, STEEL, Sheet.INK);
    sheet.line(new Point(left, middle), new Point(left + length - 12, middle), WELD, 4);
    sheet.arrowHead(new Point(left + length - 2, middle), new Point(1, 0), 14, WELD);
    sheet.text(
        new Point(left + 0.25 * length + 10, middle + 18), "weld this way", SMALL, "start", WELD);
    double mark = Math.min(0.4 * width, Coupon.MARKS_MM / 2 * scale);
    for (double at : new double[] {0.25, 0.5, 0.75}) {
      double x = left + at * length;
      for (int side : new int[] {-1, 1}) {
        sheet.circle(new Point(x, middle + side * mark), 3, BLUE, BLUE, 1);
      }
      sheet.line(new Point(x, middle - mark), new Point(x, middle + mark), BLUE, 1, "4 3");
    }
    sheet.text(
        new Point(left + 0.5 * length, top - 8),
        "punch marks " + mm(Coupon.MARKS_MM) + " apart, at 1/4, 1/2, 3/4 of the length, both faces",
        SMALL,
        "middle",
        BLUE);
    dimension(left, left + length, top + width + 18, mm(coupon.lengthMm()));
    sheet.text(
        new Point(left, top + width + 46),
        coupon.butt()
            ? "tacks of 15 mm at both ends, in the groove"
            : "tacks of 15 mm at both ends, on the side that gets no weld",
        SMALL,
        "start",
        Sheet.INK);
  }

  private void angleReading() {
    double left = 50;
    double floor = 480;
    double arm = 150;
    double middle = left + arm;
    double lift = 26;
    sheet.bold(new Point(left, 340), "3  Angle: one half flat, read the lift", HEAD, "start");
    sheet.line(new Point(left - 10, floor), new Point(left + 2 * arm + 40, floor), Sheet.INK, 1.5);
    sheet.polygon(
        List.of(
            new Point(left, floor - 9),
            new Point(middle, floor - 9),
            new Point(left + 2 * arm, floor - 9 - lift),
            new Point(left + 2 * arm, floor - lift),
            new Point(middle, floor),
            new Point(left, floor)),
        STEEL,
        Sheet.INK,
        1);
    if (!coupon.butt()) {
      sheet.polygon(
          List.of(
              new Point(middle - 6, floor - 9),
              new Point(middle - 2, floor - 70),
              new Point(middle + 8, floor - 69),
              new Point(middle + 4, floor - 9)),
          STEEL,
          Sheet.INK,
          1);
    }
    sheet.polygon(
        List.of(
            new Point(middle + 5, floor - 10),
            new Point(middle + 18, floor - 12),
            new Point(middle + 6, floor - 23)),
        WELD,
        WELD,
        1);
    sheet.line(new Point(left + 30, floor - 45), new Point(left + 30, floor - 14), BLUE, 2);
    sheet.arrowHead(new Point(left + 30, floor - 10), new Point(0, 1), 9, BLUE);
    sheet.text(new Point(left, floor - 52), "press down", SMALL, "start", BLUE);
    dimensionUp(left + 2 * arm + 12, floor - lift, floor, "lift");
    double expected = coupon.expected().get(Measure.ANGLE);
    sheet.text(
        new Point(left, floor + 24),
        "lift / "
            + mm(coupon.plateWidthMm() / 2)
            + " = tan of the angle; expected "
            + Printed.number(Math.toDegrees(expected), 2)
            + "\u00b0 = "
            + Printed.number(Math.tan(expected) * coupon.plateWidthMm() / 2, 2)
            + " mm",
        SMALL,
        "start",
        Sheet.INK);
  }

  private void bar() {
    double left = 480;
    double right = 930;
    double top = 440;
    double depth = 36;
    double sag = 16;
    sheet.bold(
        new Point(left, 340), "4  Bar, where camber is asked for: bead on the edge", HEAD, "start");
    List<Point> upper = bow(left, right, top, sag);
    List<Point> lower = bow(right, left, top + depth, sag);
    List<Point> outline = new ArrayList<>(upper);
    outline.addAll(lower);
    sheet.polygon(outline, STEEL, Sheet.INK, 1);
    sheet.polyline(upper, WELD, 4, "");
    sheet.line(new Point(left, top + depth), new Point(right, top + depth), BLUE, 1.2, "5 3");
    dimensionUp((left + right) / 2, top + depth, top + depth + sag, "");
    sheet.text(
        new Point((left + right) / 2 + 8, top + depth + sag + 16),
        "camber, expected " + Printed.number(coupon.expected().get(Measure.CAMBER), 2) + " mm",
        SMALL,
        "start",
        BLUE);
    sheet.text(
        new Point(left, top - 24),
        "bead all along this edge, in one go from one end; the bar lies free on its flat",
        SMALL,
        "start",
        WELD);
    dimension(left, right, top + depth + 52, mm(coupon.barLengthMm()));
    sheet.text(
        new Point(left, top + depth + 92),
        "flat " + mm(coupon.barWidthMm()) + " x " + mm(h()) + ", thread from end to end",
        SMALL,
        "start",
        Sheet.INK);
  }

  private static List<Point> bow(double from, double to, double y, double sag) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 24; i++) {
      double f = i / 24.0;
      points.add(new Point(from + f * (to - from), y + 4 * sag * f * (1 - f)));
    }
    return points;
  }

  private void dimension(double from, double to, double y, String text) {
    sheet.line(new Point(from, y), new Point(to, y), Sheet.INK, 0.8);
    sheet.arrowHead(new Point(from, y), new Point(-1, 0), 8, Sheet.INK);
    sheet.arrowHead(new Point(to, y), new Point(1, 0), 8, Sheet.INK);
    sheet.text(new Point((from + to) / 2, y + 14), text, SMALL, "middle", Sheet.INK);
  }

  private void dimensionUp(double x, double from, double to, String text) {
    sheet.line(new Point(x, from), new Point(x, to), Sheet.INK, 0.8);
    sheet.arrowHead(new Point(x, from), new Point(0, -1), 6, Sheet.INK);
    sheet.arrowHead(new Point(x, to), new Point(0, 1), 6, Sheet.INK);
    sheet.text(
        new Point(x + (text.equals("lift") ? 8 : -6), (from + to) / 2 + 4),
        text,
        SMALL,
        text.equals("lift") ? "start" : "end",
        Sheet.INK);
  }

  private static String mm(double value) {
    return Printed.number(value, 4) + " mm";
  }
}
