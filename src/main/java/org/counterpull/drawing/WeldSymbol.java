package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.markup.Markup;

/**
 * The weld symbol of a joint.
 *
 * <p><b>Source:</b> from memory: ISO 2553 system A (arrow side on the solid line, other side on the
 * dashed one, which is left out where both sides are alike) and AWS A2.4 (arrow side below the
 * line). Sizes in mm: z leg, s depth of penetration.
 */
public final class WeldSymbol {
  private static final double WIDTH = 460;
  private static final double HEIGHT = 190;
  private static final double LINE_Y = 84;
  private static final double FROM_X = 120;
  private static final double TO_X = 355;
  private static final double SYMBOL_X = 210;
  private static final double APART = 9;
  private static final double TALL = 24;
  private static final double TEXT = 17;
  private static final double ROUND = 8;

  /** Which standard draws it. */
  public enum Standard {
    ISO("ISO 2553, system A"),
    AWS("AWS A2.4");

    private final String words;

    Standard(String words) {
      this.words = words;
    }

    /** Its name. */
    public String words() {
      return words;
    }
  }

  private final SymbolFacts facts;
  private final boolean iso;
  private final Sheet sheet;

  private WeldSymbol(JointPlan joint, Standard standard) {
    facts = SymbolFacts.of(joint);
    iso = standard == Standard.ISO;
    sheet =
        new Sheet(
            "weld-symbol",
            WIDTH,
            HEIGHT,
            "Weld symbol of joint " + joint.joint().name(),
            "By " + standard.words() + ", sizes in mm");
  }

  /** The drawing. */
  public static Markup of(JointPlan joint, Standard standard) {
    return new WeldSymbol(joint, standard).draw();
  }

  private Markup draw() {
    boolean dashed = iso && !facts.bothSides();
    double otherY = dashed ? LINE_Y + APART : LINE_Y;
    sheet.line(new Point(FROM_X, LINE_Y), new Point(TO_X, LINE_Y), Sheet.INK, 2);
    if (dashed) {
      sheet.line(new Point(FROM_X, otherY), new Point(TO_X, otherY), Sheet.INK, 1.6, "9 5");
    }
    arrow();
    side(LINE_Y, iso, facts.arrowSide());
    if (facts.bothSides()) {
      side(LINE_Y, !iso, facts.otherSide() > 0 ? facts.otherSide() : facts.arrowSide());
    } else if (facts.onBacking()) {
      double up = iso ? 1 : -1;
      sheet.box(
          new Point(SYMBOL_X - 15, otherY + (up > 0 ? 0 : -12)), 30, 12, 0, "#fff", Sheet.INK);
      sheet.text(new Point(SYMBOL_X, otherY + up * 6 + 4), iso ? "M" : "", 11, "middle", Sheet.INK);
    } else if (facts.backing()) {
      backRun(otherY, !iso);
    }
    if (facts.allAround()) {
      sheet.circle(new Point(FROM_X, LINE_Y), ROUND, "#fff", Sheet.INK, 2);
    }
    tail();
    return sheet.done();
  }

  /** The arrow; broken where it points to the one part that is prepared. */
  private void arrow() {
    Point start = new Point(FROM_X, LINE_Y);
    Point tip = new Point(FROM_X - 62, HEIGHT - 36);
    List<Point> points = new ArrayList<>(List.of(start));
    if (facts.preparedPart().isPresent() && isOneSided()) {
      points.add(new Point(FROM_X - 40, LINE_Y + 30));
      points.add(new Point(FROM_X - 16, LINE_Y + 36));
    }
    points.add(tip);
    sheet.polyline(points, Sheet.INK, 1.8, "");
    Point last = points.get(points.size() - 2);
    sheet.arrowHead(tip, new Point(tip.x() - last.x(), tip.y() - last.y()), 13, Sheet.INK);
    facts
        .preparedPart()
        .ifPresent(
            part -> sheet.text(new Point(8, HEIGHT - 10), "to " + part, 15, "start", Sheet.INK));
  }

  private boolean isOneSided() {
    return switch (facts.kind()) {
      case BEVEL, DOUBLE_BEVEL, J, DOUBLE_J, STEEP_BEVEL -> true;
      case FILLET, SQUARE, V, DOUBLE_V, Y, STEEP_V, U, DOUBLE_U, FLARE_BEVEL, FLARE_V, PLUG, SLOT ->
          false;
    };
  }

  /** The elementary symbol on one side of a line, with size, length, gap and angle. */
  private void side(double y, boolean above, double depthMm) {
    double up = above ? -1 : 1;
    element(y, up);
    String size = iso ? facts.isoSize(depthMm) : facts.awsSize(depthMm);
    double textY = y + up * TALL / 2 + TEXT * 0.36;
    sheet.text(new Point(SYMBOL_X - 24, textY), size, TEXT, "end", Sheet.INK);
    sheet.text(new Point(SYMBOL_X + 34, textY), facts.length(iso), TEXT, "start", Sheet.INK);
    double beyond = above ? y - TALL - 8 : y + TALL + TEXT + 3;
    String angle = facts.angle();
    String gap = facts.gap();
    if (!gap.isEmpty()) {
      double gapY = above ? y - TALL + 4 : y + TALL + 6;
      double gapX = isOneSided() ? SYMBOL_X + 7 : SYMBOL_X;
      sheet.text(new Point(gapX, gapY), gap, 13, "middle", Sheet.INK);
      beyond = above ? beyond - 6 : beyond + 6;
    }
    sheet.text(new Point(SYMBOL_X, beyond), angle, TEXT, "middle", Sheet.INK);
  }

  private void element(double y, double up) {
    double top = y + up * TALL;
    double x = SYMBOL_X;
    switch (facts.kind()) {
      case FILLET ->
          sheet.polygon(
              List.of(new Point(x - 10, y), new Point(x - 10, top), new Point(x + 14, y)),
              "#fff",
              Sheet.INK,
              2);
      case PLUG, SLOT -> {
        double edge = y + up * TALL * 0.7;
        stroke(new Point(x - 18, y), new Point(x - 18, edge));
        stroke(new Point(x - 18, edge), new Point(x + 18, edge));
        stroke(new Point(x + 18, edge), new Point(x + 18, y));
      }
      case SQUARE -> {
        stroke(new Point(x - 7, y), new Point(x - 7, top));
        stroke(new Point(x + 7, y), new Point(x + 7, top));
      }
      case V, DOUBLE_V -> {
        stroke(new Point(x, y), new Point(x - 15, top));
        stroke(new Point(x, y), new Point(x + 15, top));
      }
      case BEVEL, DOUBLE_BEVEL -> {
        stroke(new Point(x - 4, y), new Point(x - 4, top));
        stroke(new Point(x - 4, y), new Point(x + 18, top));
      }
      case Y -> {
        double foot = y + up * TALL * 0.35;
        stroke(new Point(x, y), new Point(x, foot));
        stroke(new Point(x, foot), new Point(x - 13, top));
        stroke(new Point(x, foot), new Point(x + 13, top));
      }
      case STEEP_V -> {
        stroke(new Point(x - 8, y), new Point(x - 13, top));
        stroke(new Point(x + 8, y), new Point(x + 13, top));
      }
      case STEEP_BEVEL -> {
        stroke(new Point(x - 7, y), new Point(x - 7, top));
        stroke(new Point(x + 7, y), new Point(x + 13, top));
      }
      case U, DOUBLE_U -> {
        stroke(new Point(x, y), new Point(x, y + up * TALL * 0.4));
        curve(arc(x, y + up * TALL * 0.4, -13, up * TALL * 0.6));
        curve(arc(x, y + up * TALL * 0.4, 13, up * TALL * 0.6));
      }
      case J, DOUBLE_J -> {
        stroke(new Point(x, y), new Point(x, top));
        curve(arc(x, y + up * TALL * 0.4, 15, up * TALL * 0.6));
      }
      case FLARE_BEVEL -> {
        stroke(new Point(x - 4, y), new Point(x - 4, top));
        curve(flare(x + 2, y, 16, up * TALL));
      }
      case FLARE_V -> {
        curve(flare(x - 3, y, -16, up * TALL));
        curve(flare(x + 3, y, 16, up * TALL));
      }
    }
  }

  private void stroke(Point from, Point to) {
    sheet.line(from, to, Sheet.INK, 2);
  }

  private void curve(List<Point> points) {
    sheet.polyline(points, Sheet.INK, 2, "");
  }

  /** A quarter of a U: leaves its foot sideways and ends upright. */
  private static List<Point> arc(double x, double y, double wide, double high) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      double t = Math.PI / 2 * i / 8;
      points.add(new Point(x + wide * Math.sin(t), y + high * (1 - Math.cos(t))));
    }
    return points;
  }

  /** A round that bends away: leaves its foot upright and ends sideways. */
  private static List<Point> flare(double x, double y, double wide, double high) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      double t = Math.PI / 2 * i / 8;
      points.add(new Point(x + wide * (1 - Math.cos(t)), y + high * Math.sin(t)));
    }
    return points;
  }

  private void backRun(double y, boolean above) {
    double up = above ? -1 : 1;
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 16; i++) {
      double t = Math.PI * i / 16;
      points.add(new Point(SYMBOL_X - 13 * Math.cos(t), y + up * 13 * Math.sin(t)));
    }
    curve(points);
  }

  private void tail() {
    stroke(new Point(TO_X, LINE_Y), new Point(TO_X + 13, LINE_Y - 13));
    stroke(new Point(TO_X, LINE_Y), new Point(TO_X + 13, LINE_Y + 13));
    List<String> lines = new ArrayList<>();
    String processes =
        facts.joint().runs().stream()
            .map(this::process)
            .distinct()
            .collect(Collectors.joining(", "));
    lines.add(processes);
    if (!iso && facts.complete()) {
      lines.add("CJP");
    }
    double y = LINE_Y + TEXT * 0.36 - (lines.size() - 1) * TEXT / 2;
    for (String line : lines) {
      sheet.text(new Point(TO_X + 19, y), line, TEXT, "start", Sheet.INK);
      y += TEXT + 2;
    }
  }

  private String process(RunPlan run) {
    if (iso) {
      return Integer.toString(run.process().iso4063());
    }
    return switch (run.process()) {
      case MMA -> "SMAW";
      case MAG, MIG -> "GMAW";
      case FCAW, FCAW_S -> "FCAW";
      case TIG -> "GTAW";
    };
  }
}
