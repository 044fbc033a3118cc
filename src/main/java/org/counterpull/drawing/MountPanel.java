package org.counterpull.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.mount.HeatFigures;
import org.counterpull.mount.MountCase;
import org.counterpull.mount.Partner;
import org.counterpull.mount.Sensitive;
import org.counterpull.mount.Sleeve;
import org.counterpull.mount.Warmth;
import org.counterpull.mount.WayAnswer;

/** One section of a {@link MountDrawing}. */
final class MountPanel {
  private static final double TEXT = 14;
  private static final String HOT = "#a33b00";
  private static final double SEAL_MM = 4;
  private static final double ROW = 18;
  private static final double MARGIN_PX = 60;

  private final Sheet sheet;
  private final MountScale scale;
  private final MountCase mount;
  private final WayAnswer way;
  private final double top;

  MountPanel(Sheet sheet, MountScale scale, MountCase mount, WayAnswer way, double top) {
    this.sheet = sheet;
    this.scale = scale;
    this.mount = mount;
    this.way = way;
    this.top = top;
  }

  void draw() {
    tube();
    way.sleeve().ifPresent(this::sleeve);
    lug();
    for (Sensitive s : mount.near()) {
      if (!s.sized()) {
        place(s);
      }
    }
    way.heat().ifPresent(this::bore);
    dimensions();
  }

  private Point at(double zMm, double radiusMm) {
    return new Point(scale.x(zMm), top + scale.y(radiusMm));
  }

  private void block(double fromZ, double toZ, double low, double high, String fill) {
    sheet.polygon(
        List.of(at(fromZ, low), at(toZ, low), at(toZ, high), at(fromZ, high)),
        fill,
        Sheet.INK,
        1.2);
  }

  private void tube() {
    double in = mount.tube().innerRadiusMm();
    double out = mount.tube().outerRadiusMm();
    block(scale.lowMm(), scale.highMm(), in, out, "url(#cut-tube)");
    block(scale.lowMm(), scale.highMm(), -out, -in, "url(#cut-tube)");
    sheet.line(at(scale.lowMm(), 0), at(scale.highMm(), 0), Sheet.GREY, 1, "14 4 2 4");
    sheet.text(
        new Point(scale.x(scale.lowMm()) + 8, top + scale.y(0) - 6),
        String.format(
            Locale.ROOT,
            "tube %s x %s, bore %s mm",
            mm(mount.tube().outsideMm()),
            mm(mount.tube().wallMm()),
            mm(mount.tube().insideMm())),
        TEXT,
        "start",
        Sheet.INK);
  }

  private void sleeve(Sleeve sleeve) {
    double in = mount.tube().outerRadiusMm() + sleeve.gapMm();
    double out = in + sleeve.wallMm();
    block(sleeve.fromZMm(), sleeve.toZMm(), in, out, "url(#cut-sleeve)");
    block(sleeve.fromZMm(), sleeve.toZMm(), -out, -in, "url(#cut-sleeve)");
    sleeve
        .ringZMm()
        .ifPresent(
            z -> {
              double away = Math.signum(z) * 4;
              double tube = mount.tube().outerRadiusMm();
              weld(at(z, tube), at(z + away, tube), at(z, tube + 4));
              weld(at(z, -tube), at(z + away, -tube), at(z, -tube - 4));
            });
  }

  private double foot() {
    return mount.tube().outerRadiusMm() + way.sleeve().map(s -> s.gapMm() + s.wallMm()).orElse(0.0);
  }

  private void lug() {
    double half = mount.halfLengthMm();
    double foot = foot();
    if (mount.partner().kind() == Partner.Kind.LUG) {
      double high = foot + mount.partner().heightMm();
      block(-half, half, foot, high, "url(#cut-lug)");
      double leg = mount.legMm();
      weld(at(-half, foot), at(-half - leg, foot), at(-half, foot + leg));
      weld(at(half, foot), at(half + leg, foot), at(half, foot + leg));
      String words =
          String.format(
              Locale.ROOT,
              "%s %s x %s, %s high, leg %s",
              mount.partner().name(),
              mm(2 * half),
              mm(mount.partner().thicknessMm()),
              mm(mount.partner().heightMm()),
              mm(leg));
      Point beside = at(half, high);
      sheet.text(new Point(beside.x() + 12, beside.y() + TEXT), words, TEXT, "start", Sheet.INK);
    } else {
      mount.seams().stream()
          .map(s -> s.fromZMm())
          .distinct()
          .forEach(z -> weld(at(z - 2, foot), at(z + 2, foot), at(z, foot + 5)));
    }
  }

  private void weld(Point a, Point b, Point c) {
    sheet.polygon(List.of(a, b, c), Sheet.INK, Sheet.INK, 1);
  }

  private void place(Sensitive s) {
    double z = s.nearestMm(0);
    double radius = s.inside() ? mount.tube().innerRadiusMm() : foot();
    double other = s.inside() ? radius - SEAL_MM : radius + SEAL_MM;
    if (z < scale.lowMm() || z > scale.highMm()) {
      return;
    }
    block(
        z - SEAL_MM / 2,
        z + SEAL_MM / 2,
        Math.min(radius, other),
        Math.max(radius, other),
        Sheet.INK);
    block(
        z - SEAL_MM / 2,
        z + SEAL_MM / 2,
        -Math.max(radius, other),
        -Math.min(radius, other),
        Sheet.INK);
    Optional<Warmth> warm = way.heat().flatMap(h -> h.of(s.name()));
    String words =
        s.name()
            + warm.map(
                    w ->
                        String.format(Locale.ROOT, " %.0f C", w.peakC())
                            + w.limit()
                                .map(l -> String.format(Locale.ROOT, ", limit %.0f", l.longC()))
                                .orElse(""))
                .orElse("");
    Point mark = at(z, mount.tube().innerRadiusMm() - SEAL_MM);
    Point text = new Point(mark.x() + 8, mark.y() + 3 * TEXT);
    double wide = Sheet.textWidth(words, TEXT);
    boolean fits = text.x() + wide < scale.x(scale.highMm()) + 50;
    sheet.line(mark, new Point(mark.x(), text.y() - TEXT), Sheet.INK, 1);
    double left = fits ? mark.x() - 4 : mark.x() + 30 - wide;
    sheet.box(new Point(left - 3, text.y() - TEXT), wide + 6, TEXT + 4, 0, "#fff", "#fff");
    sheet.text(
        new Point(fits ? mark.x() - 4 : mark.x() + 30, text.y()),
        words,
        TEXT,
        fits ? "start" : "end",
        warm.filter(Warmth::spoilt).isPresent() ? HOT : Sheet.INK);
  }

  private void bore(HeatFigures heat) {
    double z = Math.max(scale.lowMm(), Math.min(scale.highMm(), heat.borePeakZMm()));
    Point hot = at(z, mount.tube().innerRadiusMm());
    sheet.circle(hot, 4, HOT, HOT, 1);
    Point text = new Point(hot.x() + 4, hot.y() + 26);
    sheet.line(hot, new Point(hot.x(), text.y() - TEXT), HOT, 1);
    sheet.text(
        text,
        String.format(Locale.ROOT, "bore %.0f C", heat.borePeakC()),
        TEXT,
        hot.x() < 2 * MARGIN_PX ? "start" : "end",
        HOT);
  }

  private void dimensions() {
    double base = top + scale.y(-scale.bottomMm()) + 16;
    double row = base;
    double half = mount.halfLengthMm();
    for (Sensitive s : mount.near()) {
      double z = s.nearestMm(0);
      double from = Math.signum(z) * half;
      if (!s.sized() && Math.abs(z) > half && z >= scale.lowMm() && z <= scale.highMm()) {
        dimension(from, z, row, mm(Math.abs(z - from)) + " to " + s.name());
        row += ROW;
      }
    }
    if (way.sleeve().isPresent()) {
      Sleeve s = way.sleeve().get();
      String words =
          String.format(
              Locale.ROOT,
              "sleeve %s long, wall %s, bore %.1f",
              mm(s.lengthMm()),
              mm(s.wallMm()),
              s.boreMm(mount.tube()));
      dimension(s.fromZMm(), s.toZMm(), row, words);
    }
  }

  private void dimension(double fromZ, double toZ, double y, String words) {
    Point a = new Point(Math.min(scale.x(fromZ), scale.x(toZ)), y);
    Point b = new Point(Math.max(scale.x(fromZ), scale.x(toZ)), y);
    sheet.line(a, b, Sheet.INK, 1);
    sheet.arrowHead(a, new Point(-1, 0), 7, Sheet.INK);
    sheet.arrowHead(b, new Point(1, 0), 7, Sheet.INK);
    double wide = Sheet.textWidth(words, TEXT);
    double middle = (a.x() + b.x()) / 2;
    if (wide < b.x() - a.x() - 20) {
      sheet.box(new Point(middle - wide / 2, y - 9), wide, 18, 0, "#fff", "#fff");
      sheet.text(new Point(middle, y + 5), words, TEXT, "middle", Sheet.INK);
    } else {
      sheet.text(new Point(a.x() - 8, y + 5), words, TEXT, "end", Sheet.INK);
    }
  }

  private static String mm(double value) {
    return org.counterpull.quantity.Printed.number(value, 4);
  }
}
