package org.counterpull.heatjob;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.heat.source.UniformBox;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Operation;

/**
 * A broad flame along a run: even heat in all metal of a box around its line, as much as takes that
 * metal to the preheat temperature and a little beyond. Taken as well led: who heats measures.
 */
final class Flame {
  private static final double REACH_MM = 75;

  /** What flows away while it is led, as a share of the rise. */
  private static final double BEYOND = 0.7;

  /** Metal is held this much above the preheat temperature: what is measured falls at once. */
  private static final double HELD_OVER_K = 5;

  /** A unit flame burns for so long. */
  static final double UNIT_S = 10;

  private static final int LOOKS = 16;

  private final Vector3D middle;
  private final Vector3D along;
  private final Vector3D into;
  private final Vector3D across;
  private final double lengthMm;
  private final double widthMm;

  private Flame(WeldedRun run) {
    double length = run.path().lengthMm();
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i <= LOOKS; i++) {
      sum = sum.add(run.path().at(length * i / LOOKS));
    }
    middle = sum.scalarMultiply(1.0 / (LOOKS + 1));
    along = run.path().tangent(length / 2).normalize();
    Vector3D out = run.opening().subtract(along.scalarMultiply(run.opening().dotProduct(along)));
    into = out.getNorm() > 0.1 ? out.normalize().negate() : along.orthogonal();
    across = along.crossProduct(into);
    double halfLength = 0;
    double halfWidth = 0;
    for (int i = 0; i <= LOOKS; i++) {
      Vector3D d = run.path().at(length * i / LOOKS).subtract(middle);
      halfLength = Math.max(halfLength, Math.abs(d.dotProduct(along)));
      halfWidth = Math.max(halfWidth, Math.abs(d.dotProduct(across)));
      halfWidth = Math.max(halfWidth, Math.abs(d.dotProduct(into)));
    }
    lengthMm = 2 * halfLength + REACH_MM;
    widthMm = 2 * (halfWidth + REACH_MM);
  }

  /** Whether a preheating step heats a run: its own, or its joint before tacking. */
  static boolean isOn(Operation operation, RunPlan plan) {
    return operation
        .run()
        .map(plan.name()::equals)
        .orElseGet(() -> plan.line().joint().equals(operation.where()));
  }

  /** The flame of a run from now on; none where the metal is warm already. */
  static List<MovingSource> on(
      Layout layout, WeldedRun run, double preheatC, Simulation simulation, double seconds) {
    Flame flame = new Flame(run);
    double needJ = flame.needJ(layout, simulation::temperatureC, beyond(preheatC));
    return flame.burning(run.name() + " flame", needJ, simulation.timeS(), seconds);
  }

  /**
   * The flame that goes on until the arc starts, for some seconds from now on; none where the line
   * is warm enough.
   *
   * @param coolestC lowest temperature along the run's line now
   */
  static List<MovingSource> holding(
      Layout layout,
      WeldedRun run,
      double preheatC,
      double coolestC,
      Simulation simulation,
      double seconds) {
    Flame flame = new Flame(run);
    double heldC = heldC(preheatC);
    if (coolestC >= heldC) {
      return List.of();
    }
    double needJ = flame.needJ(layout, (block, cell) -> coolestC, nowC -> heldC);
    return flame.burning(run.name() + " held warm", needJ, simulation.timeS(), seconds);
  }

  /**
   * The flame that takes cold metal to the preheat temperature, short enough to be added up to any
   * flame of that run; empty where the work is warm enough as it is.
   */
  static Optional<MovingSource> unit(Layout layout, WeldedRun run, double preheatC, double airC) {
    Flame flame = new Flame(run);
    double needJ = flame.needJ(layout, (block, cell) -> airC, beyond(preheatC));
    return flame.burning(run.name() + " flame", needJ, 0, UNIT_S).stream().findFirst();
  }

  /** How warm the coolest point of a line is held until its arc starts, deg C. */
  static double heldC(double preheatC) {
    return preheatC + HELD_OVER_K;
  }

  private List<MovingSource> burning(String name, double needJ, double startS, double seconds) {
    if (needJ <= 0) {
      return List.of();
    }
    Vector3D top = middle.subtract(into.scalarMultiply(widthMm / 2));
    Vector3D little = along.scalarMultiply(0.5);
    Vec3 down = Axes.point(into);
    return List.of(
        new MovingSource(
            name,
            needJ / seconds,
            startS,
            startS + seconds,
            new TravelPath(
                List.of(Axes.point(top.subtract(little)), Axes.point(top.add(little))),
                List.of(down, down)),
            new UniformBox(lengthMm, widthMm, widthMm)));
  }

  /** The temperature of a cell. */
  private interface Warmth {
    double tempC(Block block, int cell);
  }

  /** Heat of the flame on metal that is at one temperature all over, J. */
  static double evenNeedJ(Layout layout, WeldedRun run, double preheatC, double nowC) {
    return Math.max(0, new Flame(run).needJ(layout, (block, cell) -> nowC, beyond(preheatC)));
  }

  private static DoubleUnaryOperator beyond(double preheatC) {
    return nowC -> preheatC + BEYOND * Math.max(0, preheatC - nowC);
  }

  private double needJ(Layout layout, Warmth now, DoubleUnaryOperator wantedC) {
    double needJ = 0;
    for (PartBlock made : layout.blocks()) {
      Block block = made.block();
      for (int p = block.first(); p < block.end(); p++) {
        double volume = block.volumeMm3()[p];
        if (volume > 0 && inside(block.centre(p))) {
          double nowC = now.tempC(block, p);
          double need = block.material().enthalpyJPerMm3(wantedC.applyAsDouble(nowC));
          needJ += volume * (need - block.material().enthalpyJPerMm3(nowC));
        }
      }
    }
    return needJ;
  }

  private boolean inside(Vec3 at) {
    Vector3D d = new Vector3D(at.x(), at.y(), at.z()).subtract(middle);
    return Math.abs(d.dotProduct(along)) <= lengthMm / 2
        && Math.abs(d.dotProduct(across)) <= widthMm / 2
        && Math.abs(d.dotProduct(into)) <= widthMm / 2;
  }
}
