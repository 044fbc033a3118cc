package org.counterpull.registry;

import java.util.Arrays;
import java.util.List;
import org.counterpull.feeding.WireFeed;
import org.counterpull.fillet.MinimumFillet;
import org.counterpull.groove.Groove;
import org.counterpull.groove.GrooveArea;
import org.counterpull.groove.Preparation;

/** Published formulas of the packages {@code feeding}, {@code groove} and {@code fillet}. */
final class WeldFormulas {
  private WeldFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(wireFeed(), grooveArea(), minimumFillet());
  }

  private static PublishedFormula wireFeed() {
    return PublishedFormula.of(
        WireFeed.FORMULA,
        List.of(
            Argument.quantity("diameter", "mm", "wire diameter"),
            Argument.quantity("current", "A", "welding current"),
            Argument.quantity("stick-out", "mm", "electrode extension, contact tip to arc")),
        a -> WireFeed.of(a.value("diameter"), a.value("current"), a.value("stick-out")));
  }

  private static PublishedFormula grooveArea() {
    return PublishedFormula.of(
        GrooveArea.FORMULA,
        List.of(
            Argument.choice(
                "preparation",
                "form of the edges",
                Arrays.stream(Preparation.values()).map(Preparation::word).toList()),
            Argument.quantity("thickness", "mm", "plate thickness"),
            Argument.quantity("gap", "mm", "root gap").orElse("0"),
            Argument.quantity("root-face", "mm", "root face").orElse("0"),
            Argument.quantity("angle", "deg", "included angle for v and double-v, of one edge else")
                .orElse("0"),
            Argument.quantity("radius", "mm", "root radius of u and j").orElse("0")),
        a -> {
          Preparation preparation = Preparation.of(a.text("preparation"));
          return GrooveArea.of(
              preparation == Preparation.SQUARE
                  ? Groove.square(a.value("thickness"), a.value("gap"))
                  : new Groove(
                      preparation,
                      a.value("thickness"),
                      a.value("gap"),
                      a.value("root-face"),
                      a.value("angle"),
                      a.value("radius")));
        });
  }

  private static PublishedFormula minimumFillet() {
    return PublishedFormula.of(
        MinimumFillet.FORMULA,
        List.of(Argument.quantity("thickness", "mm", "governing base metal thickness")),
        a -> MinimumFillet.of(a.value("thickness")));
  }
}
