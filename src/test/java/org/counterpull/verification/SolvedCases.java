package org.counterpull.verification;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.counterpull.heat.solve.HeatCases;
import org.counterpull.jointplan.PassCases;
import org.counterpull.mount.MountHeatCases;
import org.counterpull.pull.ShapeCases;
import org.counterpull.zone.ZoneCases;

/** Everything by which a case of the book can be solved, by name. */
final class SolvedCases {
  private static final Map<String, ToDoubleFunction<Map<String, String>>> ALL =
      new LinkedHashMap<>();

  static {
    ALL.putAll(ShrinkageCases.all());
    ALL.putAll(ShapeCases.all());
    ALL.putAll(ZoneCases.all());
    ALL.putAll(WeldCases.all());
    ALL.putAll(PassCases.all());
    ALL.putAll(HeatCases.all());
    ALL.putAll(MountHeatCases.all());
  }

  private SolvedCases() {}

  static double solve(String name, Map<String, String> arguments) {
    ToDoubleFunction<Map<String, String>> solver = ALL.get(name);
    if (solver == null) {
      throw new IllegalArgumentException("nothing solves " + name + "; known: " + ALL.keySet());
    }
    return solver.applyAsDouble(arguments);
  }
}
