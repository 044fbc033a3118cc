package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.markup.Markup;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.MountCase;
import org.counterpull.mount.Way;
import org.counterpull.mount.WayAnswer;

/**
 * The tube cut along its axis, once for the weld as drawn and once for each sleeve, with
 * temperatures.
 */
public final class MountDrawing {
  private static final double GAP = 26;
  private static final double TITLE = 17;

  private MountDrawing() {}

  /** The drawing. */
  public static Markup of(MountAnswer answer, double widthPx) {
    List<WayAnswer> shown = new ArrayList<>();
    shown.add(answer.of(Way.AS_DRAWN));
    for (WayAnswer way : answer.ways()) {
      if (way.sleeve().isPresent()) {
        shown.add(way);
      }
    }
    MountScale scale = MountScale.of(answer.mount(), shown, widthPx);
    double each = scale.heightPx() + GAP + TITLE;
    MountCase mount = answer.mount();
    Sheet sheet =
        new Sheet(
            "mount-section",
            widthPx,
            each * shown.size() + GAP,
            "Section through " + mount.name(),
            String.join(" ", answer.verdict()));
    sheet.hatch("cut-tube", 6, 45, "#fff", 0.8);
    sheet.hatch("cut-lug", 6, -45, "#fff", 0.8);
    sheet.hatch("cut-sleeve", 4, 45, "#e6e6e6", 0.8);
    double top = 0;
    for (WayAnswer way : shown) {
      sheet.bold(new Point(12, top + GAP), title(way), TITLE, "start");
      new MountPanel(sheet, scale, mount, way, top + GAP + TITLE).draw();
      top += each;
    }
    return sheet.done();
  }

  private static String title(WayAnswer way) {
    Optional<Double> peak = way.heat().map(h -> h.borePeakC());
    return way.way().words()
        + ": "
        + way.outcome().words()
        + peak.map(c -> String.format(Locale.ROOT, "; bore at most %.0f C", c)).orElse("");
  }
}
