package org.counterpull.heat.superposed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.material.HeatMaterials;
import org.counterpull.heat.solve.Fineness;
import org.counterpull.heat.solve.HeatModel;
import org.counterpull.heat.solve.Probe;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.DoubleEllipsoid;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A lug on a bar with two fillets: sums of responses against simulations. */
class ResponsesTest {
  private static final double HORIZON_S = 1200;
  private static final LinearRange RANGE = LinearRange.forInterpass(20, 100);

  private final Block bar =
      new Block(
          "bar",
          HeatMaterials.carbonSteel(),
          Frame.WORLD,
          new CartesianGrid(
              Grading.graded(0, 200, List.of(new Grading.Zone(60, 140)), 4, 1.3, 12),
              Grading.uniform(0, 60, 5),
              Grading.uniform(-10, 0, 4)));
  private final Block lug =
      new Block(
          "lug",
          HeatMaterials.carbonSteel(),
          Frame.withZ(new Vec3(70, 25, 0), Vec3.Z),
          new CartesianGrid(
              Grading.uniform(0, 60, 4), Grading.uniform(0, 10, 4), Grading.uniform(0, 40, 5)));
  private final HeatModel model =
      HeatModel.builder()
          .block(bar)
          .block(lug)
          .faces(StillAir.onFlats(60, 0.8))
          .link(Links.fitted(lug, Side.Z_LOW, bar, Side.Z_HIGH, 1000, 0.1))
          .build();
  private final List<MovingSource> runs = List.of(fillet("front", 25, 1), fillet("back", 35, -1));
  private final List<Link> laid =
      List.of(
          Links.weld(bar, lug, new Vec3(70, 25, 0), new Vec3(130, 25, 0), 4, 5, 0),
          Links.weld(bar, lug, new Vec3(70, 35, 0), new Vec3(130, 35, 0), 4, 5, 0));
  private final List<Target> targets =
      List.of(
          new Target("other end of back", bar, new Vec3(130, 35, 0)),
          new Target("top of lug", lug, new Vec3(100, 30, 40)),
          new Target("end of bar", bar, new Vec3(200, 30, 0)));

  private static MovingSource fillet(String name, double y, double side) {
    return MovingSource.along(
        name,
        2200,
        0,
        TravelPath.straight(new Vec3(70, y, 0), new Vec3(130, y, 0), new Vec3(0, side, -1)),
        4,
        new DoubleEllipsoid(4, 8, 5, 5));
  }

  private Responses responses() {
    List<Run> both = runs.stream().map(r -> new Run(r, List.of())).toList();
    return Responses.of(model, laid, both, targets, RANGE, Fineness.NORMAL, HORIZON_S);
  }

  // On a linear model a sum is no approximation: both orders, 1 % of the rise after the arcs.
  @Test
  void sumsAreExactOnALinearModel() {
    Responses responses = responses();
    LinearCopy linear = new LinearCopy(model, laid, RANGE);
    for (int first = 0; first < 2; first++) {
      List<Struck> order = List.of(new Struck(first, 0), new Struck(1 - first, 60));
      Simulation s = new Simulation(linear.model(), Fineness.NORMAL, 20);
      s.strike(runs.get(first));
      s.strike(runs.get(1 - first).startingAt(60));
      for (double t : new double[] {45, 110, 300, 900}) {
        s.advanceTo(t);
        for (int n = 0; n < targets.size(); n++) {
          Target target = targets.get(n);
          double rise = s.temperatureC(linear.of(target.block()), target.point()) - 20;
          assertThat(responses.temperatureC(n, order, t) - 20)
              .as("%s at %s s", target.name(), t)
              .isCloseTo(rise, within(0.01 * rise + 0.05));
        }
      }
    }
  }

  // Waits after the first fillet until each target is down to a limit, against the full model with
  // temperature-dependent steel and radiation: 10 % or 5 s.
  @ParameterizedTest
  @ValueSource(doubles = {65, 80, 100, 150})
  void waitsAreNearTheFullModels(double limitC) {
    LinearRange range = LinearRange.forInterpass(20, limitC);
    Responses responses =
        Responses.of(
            model,
            List.of(),
            List.of(new Run(runs.get(0), laid.subList(0, 1))),
            targets,
            range,
            Fineness.NORMAL,
            HORIZON_S);
    Simulation s = new Simulation(model, Fineness.NORMAL, 20);
    List<Probe> probes = new ArrayList<>();
    targets.forEach(t -> probes.add(s.probe(t.name(), t.block(), t.point())));
    s.strike(runs.get(0));
    s.lay(laid.get(0));
    s.advanceTo(HORIZON_S);
    double end = runs.get(0).endS();
    for (int n = 0; n < targets.size(); n++) {
      double summed = responses.coolS(n, limitC, List.of(new Struck(0, 0)), end, HORIZON_S) - end;
      double full = lastAbove(probes.get(n), limitC, end) - end;
      assertThat(summed)
          .as("%s down to %s C", targets.get(n).name(), limitC)
          .isCloseTo(full, within(Math.max(5, 0.1 * full)));
    }
  }

  private static double lastAbove(Probe probe, double limitC, double fromS) {
    double t = HORIZON_S;
    while (t > fromS && probe.atC(t) <= limitC) {
      t -= 0.1;
    }
    return Math.max(t, fromS);
  }

  // Beyond the horizon the rise decays on: never grows, never turns negative.
  @Test
  void decaysBeyondItsHorizon() {
    Responses responses = responses();
    double before = responses.riseK(0, 2, HORIZON_S);
    for (double t = HORIZON_S + 50; t < 5 * HORIZON_S; t += 200) {
      double now = responses.riseK(0, 2, t);
      assertThat(now).isBetween(0.0, before);
      before = now;
    }
    assertThat(responses.riseK(0, 2, -1)).isZero();
    assertThat(responses.riseK(0, 2, 0)).isZero();
  }
}
