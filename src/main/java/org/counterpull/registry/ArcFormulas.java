package org.counterpull.registry;

import java.util.List;
import org.counterpull.arc.HeatInput;

/** Published formulas of the package {@code arc}. */
final class ArcFormulas {
  private ArcFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(
        PublishedFormula.of(
            HeatInput.FORMULA,
            List.of(
                Argument.quantity(
                    "efficiency", "1", "factor k of the process, 0.8 for mma and mag, 0.6 for tig"),
                Argument.quantity("voltage", "V", "arc voltage"),
                Argument.quantity("current", "A", "arc current"),
                Argument.quantity("travel-speed", "mm/s", "travel speed")),
            a ->
                HeatInput.of(
                    a.value("efficiency"),
                    a.value("voltage"),
                    a.value("current"),
                    a.value("travel-speed"))));
  }
}
