package org.counterpull.registry;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.cooling.AdamsPeakTemperature;
import org.counterpull.cooling.Conductor;
import org.counterpull.cooling.CoolingTime85;
import org.counterpull.cooling.MovingLineSource;
import org.counterpull.cooling.MovingPointSource;

/** Published formulas of the package {@code cooling}. */
final class CoolingFormulas {
  private CoolingFormulas() {}

  static List<PublishedFormula> all() {
    return List.of(t85(), pointSource(), lineSource(), peakTemperature());
  }

  private static PublishedFormula t85() {
    return PublishedFormula.of(
        CoolingTime85.FORMULA,
        List.of(
            Argument.quantity("heat-input", "kJ/mm", "heat input with the factor k"),
            Argument.quantity("thickness", "mm", "plate thickness"),
            Argument.quantity("preheat", "C", "preheat or interpass temperature"),
            Argument.quantity("f2", "1", "shape factor of thin flow").orElse("1"),
            Argument.quantity("f3", "1", "shape factor of thick flow").orElse("1")),
        a ->
            CoolingTime85.of(
                a.value("heat-input"),
                a.value("thickness"),
                a.value("preheat"),
                a.value("f2"),
                a.value("f3")));
  }

  private static PublishedFormula pointSource() {
    List<Argument> arguments = new ArrayList<>(source());
    arguments.addAll(place());
    arguments.add(Argument.quantity("z", "mm", "depth below the surface"));
    return PublishedFormula.of(
        MovingPointSource.FORMULA,
        arguments,
        a ->
            MovingPointSource.of(
                a.value("power"),
                a.value("travel-speed"),
                metal(a),
                a.value("x"),
                a.value("y"),
                a.value("z")));
  }

  private static PublishedFormula lineSource() {
    List<Argument> arguments = new ArrayList<>(source());
    arguments.add(Argument.quantity("thickness", "mm", "plate thickness"));
    arguments.addAll(place());
    return PublishedFormula.of(
        MovingLineSource.FORMULA,
        arguments,
        a ->
            MovingLineSource.of(
                a.value("power"),
                a.value("travel-speed"),
                metal(a),
                a.value("thickness"),
                a.value("x"),
                a.value("y")));
  }

  private static PublishedFormula peakTemperature() {
    return PublishedFormula.of(
        AdamsPeakTemperature.FORMULA,
        List.of(
            Argument.quantity("net-heat-input", "J/mm", "net heat per length"),
            Argument.quantity("thickness", "mm", "plate thickness"),
            Argument.quantity("distance", "mm", "distance from the fusion boundary"),
            Argument.quantity("preheat", "C", "temperature before the pass"),
            Argument.quantity("melting", "C", "melting temperature, 1510 for steel"),
            Argument.quantity("heat-capacity", "J/mm3K", "heat capacity by volume")),
        a ->
            AdamsPeakTemperature.of(
                a.value("net-heat-input"),
                a.value("thickness"),
                a.value("distance"),
                a.value("preheat"),
                a.value("melting"),
                a.value("heat-capacity")));
  }

  private static List<Argument> source() {
    return List.of(
        Argument.quantity("power", "W", "net power of the arc"),
        Argument.quantity("travel-speed", "mm/s", "travel speed"),
        Argument.quantity("conductivity", "W/mmK", "conductivity"),
        Argument.quantity("heat-capacity", "J/mm3K", "heat capacity by volume"));
  }

  private static List<Argument> place() {
    return List.of(
        Argument.quantity("x", "mm", "ahead of the arc; behind it negative"),
        Argument.quantity("y", "mm", "to the side of the line of travel"));
  }

  private static Conductor metal(Arguments a) {
    return new Conductor(a.value("conductivity"), a.value("heat-capacity"));
  }
}
