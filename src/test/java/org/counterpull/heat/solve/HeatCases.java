package org.counterpull.heat.solve;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.FixedFilm;
import org.counterpull.heat.face.Insulated;
import org.counterpull.heat.source.UniformBox;

/** The solver on bodies of which the temperature is known otherwise, for the book. */
public final class HeatCases {
  private static final Map<String, Simulation> SOLVED = new HashMap<>();

  private HeatCases() {}

  /** All cases. */
  public static Map<String, ToDoubleFunction<Map<String, String>>> all() {
    Map<String, ToDoubleFunction<Map<String, String>>> all = new LinkedHashMap<>();
    all.put("moving source on a plate", HeatCases::moving);
    all.put("plate of the independent solution", HeatCases::fePlate);
    all.put("plane source in a bar", HeatCases::bar);
    all.put(
        "wait on a wide plate",
        a -> InstantaneousClosedFormTest.waitOnAWidePlate(of(a, "Q"), of(a, "d"), of(a, "limit")));
    all.put(
        "width of the heat-affected zone", a -> InstantaneousClosedFormTest.heatAffectedWidthMm());
    all.put("cooling of a block", HeatCases::block);
    all.put("fin from a held end", a -> CoolingBodyTest.finShare());
    all.put("wall of a tube", a -> CoolingBodyTest.cylinderWallC(of(a, "r")));
    all.put(
        "time from 800 to 500 C",
        a ->
            TemperatureDependentCoolingTest.fallTime(
                of(a, "Q"),
                of(a, "d"),
                a.get("faces").equals("losing") ? new FixedFilm(10, 0.8) : new Insulated()));
    return all;
  }

  private static double of(Map<String, String> arguments, String name) {
    return Double.parseDouble(arguments.get(name));
  }

  /** Rise at a point behind the arc; the same plates as in the tests of the closed forms. */
  private static double moving(Map<String, String> a) {
    String plate = a.get("plate");
    boolean long10 = plate.equals("10 mm");
    double travel = long10 ? 165 : 75;
    Simulation s =
        SOLVED.computeIfAbsent(
            plate,
            p -> {
              Simulation made =
                  switch (p) {
                    case "thick" ->
                        MovingSourceClosedFormTest.half(
                            75, 50, 50, 1.5, new UniformBox(3, 3, 1.5), 0);
                    case "5 mm" ->
                        MovingSourceClosedFormTest.half(
                            75, 60, 5, 1.25, new UniformBox(2, 2, 5), 0);
                    case "5 mm in a film" ->
                        MovingSourceClosedFormTest.half(
                            75, 60, 5, 1.25, new UniformBox(2, 2, 5), 20);
                    default ->
                        MovingSourceClosedFormTest.half(
                            165, 60, 10, 1.43, new UniformBox(3, 4, 1.43), 0);
                  };
              made.advanceTo(travel / 5);
              return made;
            });
    Vec3 at = new Vec3(30 + travel + of(a, "x"), of(a, "y"), -of(a, "z"));
    return s.temperatureC(s.model().blocks().get(0), at);
  }

  private static double fePlate(Map<String, String> a) {
    Simulation s =
        SOLVED.computeIfAbsent("independent", k -> FePlateTest.plate(2, Fineness.NORMAL));
    String asked = a.get("asked");
    if (asked.equals("stored")) {
      return s.balance().storedJ() / 1e3;
    }
    String name = "at " + of(a, "x") + ", " + of(a, "y");
    Vec3 at = new Vec3(of(a, "x"), of(a, "y"), of(a, "z"));
    Probe probe =
        s.probes().stream()
            .filter(p -> p.name().equals(name) && p.point().equals(at))
            .findFirst()
            .orElseThrow();
    return asked.equals("peak") ? probe.peakC() : probe.nowC();
  }

  private static double bar(Map<String, String> a) {
    Simulation s = InstantaneousClosedFormTest.bar(400);
    s.advanceTo(of(a, "t"));
    return s.temperatureC(s.model().blocks().get(0), new Vec3(of(a, "x"), 0, 0));
  }

  private static double block(Map<String, String> a) {
    double[] size = {of(a, "x"), of(a, "y"), of(a, "z")};
    return CoolingBodyTest.lumpedBlockS(
        a.get("metal"), size, of(a, "emissivity"), of(a, "from"), of(a, "to"));
  }
}
