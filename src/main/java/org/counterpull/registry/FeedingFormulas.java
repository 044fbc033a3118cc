package org.counterpull.registry;

import java.util.List;
import org.counterpull.feeding.MetalCoredFeed;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.SprayCurrent;
import org.counterpull.feeding.StickElectrode;
import org.counterpull.feeding.StickRun;
import org.counterpull.feeding.WireDeposition;

/** Published formulas of the package {@code feeding}. */
final class FeedingFormulas {
  private FeedingFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(deposition(), metalCored(), spray(), stickRun());
  }

  private static Argument diameter() {
    return Argument.quantity("diameter", "mm", "of the wire");
  }

  private static Argument current() {
    return Argument.quantity("current", "A", "welding current");
  }

  private static PublishedFormula deposition() {
    return PublishedFormula.of(
        WireDeposition.FORMULA,
        List.of(
            diameter(),
            current(),
            Argument.quantity("stick-out", "mm", "contact tip to arc"),
            Argument.quantity("efficiency", "1", "weld metal over wire").orElse("0.95")),
        a ->
            WireDeposition.of(
                a.value("diameter"),
                a.value("current"),
                a.value("stick-out"),
                a.value("efficiency")));
  }

  private static PublishedFormula metalCored() {
    return PublishedFormula.of(
        MetalCoredFeed.FORMULA,
        List.of(diameter(), current()),
        a -> MetalCoredFeed.of(a.value("diameter"), a.value("current")));
  }

  private static PublishedFormula spray() {
    return PublishedFormula.of(
        SprayCurrent.FORMULA,
        List.of(
            diameter(),
            Argument.quantity("argon", "%", "in the gas"),
            Argument.quantity("co2", "%", "in the gas").orElse("0")),
        a ->
            SprayCurrent.of(
                a.value("diameter"), new ShieldingGas(a.value("argon"), a.value("co2"))));
  }

  private static PublishedFormula stickRun() {
    return PublishedFormula.of(
        StickRun.FORMULA,
        List.of(
            Argument.quantity("diameter", "mm", "of the core"),
            Argument.quantity("length", "mm", "of the electrode"),
            Argument.quantity("stub", "mm", "thrown away").orElse("50"),
            Argument.quantity("recovery", "1", "weld metal over core wire").orElse("1"),
            Argument.quantity("leg", "mm", "of the fillet")),
        a ->
            StickRun.of(
                new StickElectrode(
                    a.value("diameter"), a.value("length"), a.value("stub"), a.value("recovery")),
                a.value("leg")));
  }
}
