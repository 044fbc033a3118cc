package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.counterpull.fit.AxisZone;
import org.counterpull.markup.Markup;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.PinRow.Bore;

/**
 * A row of bores with what it is off, many times enlarged, seen twice: for each bore the room that
 * the pin's middle has in it, white between grey walls; the pin's middle is the straight line
 * through all of them. The pin turns where the line stays in the white.
 */
public final class PinPicture {
  private static final double MARGIN = 30;
  private static final double WALL = 10;
  private static final double PANEL = 214;
  private static final double LARGEST = 62;
  private static final String GREY_WALL = "#bdbdbd";
  private static final String BAD = "#b00020";
  private static final String[] PIECES = {"#111", "#00507a", "#4a6b00", "#6a2a72"};

  private final PinRow row;
  private final double width;
  private final double text;
  private final double along;
  private final double scale;
  private final List<Integer> pieces;

  private PinPicture(PinRow row, double widthPx) {
    this.row = row;
    this.width = widthPx;
    this.text = widthPx < 600 ? 12 : 14;
    double length = row.bores().get(row.bores().size() - 1).toMm();
    along = (width - 2 * MARGIN) / Math.max(1, length);
    double most = 0;
    for (Bore bore : row.bores()) {
      double room = room(bore) / 2;
      most = Math.max(most, room + farthest(bore));
    }
    scale = LARGEST / Math.max(1e-6, most);
    pieces = row.bores().stream().map(Bore::piece).distinct().toList();
  }

  /** The drawing; empty where the shape is not worked out. */
  public static Optional<Markup> of(PinRow row, double widthPx) {
    return row.fit().zone().isEmpty()
        ? Optional.empty()
        : Optional.of(new PinPicture(row, widthPx).draw());
  }

  /** Room of the pin's middle in a bore, on diameter. */
  private double room(Bore bore) {
    return Math.max(0, row.fit().clearanceMm() - bore.closingMm());
  }

  private static double farthest(Bore bore) {
    return Math.max(bore.left().orElseThrow().mm(), bore.right().orElseThrow().mm());
  }

  private Markup draw() {
    List<String> legend = legend();
    double height = 2 * PANEL + MARGIN + legend.size() * (text + 8);
    Sheet sheet =
        new Sheet(
            "pin-row",
            width,
            height,
            "Room for the pin of " + row.name(),
            String.join(" ", legend));
    panel(sheet, MARGIN + 0.5 * PANEL, "seen from the side", AxisZone.Off::oneMm);
    panel(sheet, MARGIN + 1.5 * PANEL, "seen a quarter turn on", AxisZone.Off::otherMm);
    bar(sheet);
    double y = MARGIN / 2 + 2 * PANEL;
    for (String line : legend) {
      sheet.text(new Point(MARGIN, y), line, text, "start", Sheet.INK);
      y += text + 8;
    }
    return sheet.done();
  }

  private void panel(Sheet sheet, double middle, String title, ToDoubleFunction<AxisZone.Off> way) {
    sheet.text(new Point(MARGIN, middle - LARGEST - WALL - 14), title, text, "start", Sheet.GREY);
    int number = 0;
    for (Bore bore : row.bores()) {
      bore(sheet, bore, middle, ++number, way);
    }
    sheet.line(new Point(MARGIN / 3, middle), new Point(width - MARGIN / 3, middle), BAD, 1.6, "");
  }

  private void bore(
      Sheet sheet, Bore bore, double middle, int number, ToDoubleFunction<AxisZone.Off> way) {
    double left = MARGIN + along * bore.fromMm();
    double right = MARGIN + along * bore.toMm();
    double half = scale * room(bore) / 2;
    double leftY = middle - scale * way.applyAsDouble(bore.left().orElseThrow());
    double rightY = middle - scale * way.applyAsDouble(bore.right().orElseThrow());
    String ink = PIECES[pieces.indexOf(bore.piece()) % PIECES.length];
    sheet.polygon(box(left, right, leftY, rightY, half + WALL), GREY_WALL, ink, 1.2);
    sheet.polygon(box(left, right, leftY, rightY, half), "#fff", ink, 1);
    double below = Math.max(leftY, rightY) + half + WALL + text + 3;
    sheet.text(new Point((left + right) / 2, below), Integer.toString(number), text, "middle", ink);
  }

  private static List<Point> box(
      double left, double right, double leftY, double rightY, double half) {
    return List.of(
        new Point(left, leftY - half),
        new Point(right, rightY - half),
        new Point(right, rightY + half),
        new Point(left, leftY + half));
  }

  /** A measure for the enlarged direction. */
  private void bar(Sheet sheet) {
    double mm = 0.1;
    while (scale * mm > LARGEST) {
      mm /= 2;
    }
    while (scale * mm < LARGEST / 4) {
      mm *= 2;
    }
    double x = width - MARGIN / 2;
    double top = 8;
    sheet.line(new Point(x, top), new Point(x, top + scale * mm), Sheet.INK, 3, "");
    sheet.text(
        new Point(x - 8, top + text),
        String.format(Locale.ROOT, "%s mm across", org.counterpull.quantity.Printed.number(mm, 2)),
        text,
        "end",
        Sheet.INK);
  }

  private List<String> legend() {
    List<String> legend = new ArrayList<>();
    boolean narrow = width < 600;
    legend.add("White: room for the pin's middle in each bore.");
    legend.add(
        narrow
            ? "Red: a straight pin. It turns where red stays in white."
            : "Red: the middle of one straight pin. It turns by hand where red stays in white; grey is metal.");
    if (pieces.size() > 1) {
      legend.add(
          narrow
              ? "Each colour is a piece, hung on the pin."
              : "Each colour of outline is a welded piece with a line of its own, hung on the pin.");
    }
    return legend;
  }
}
