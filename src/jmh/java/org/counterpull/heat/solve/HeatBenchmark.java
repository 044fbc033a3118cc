package org.counterpull.heat.solve;

import java.util.concurrent.TimeUnit;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.face.StillAir;
import org.counterpull.heat.material.HeatMaterials;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Cell updates per second of the heat engine, and the memory bandwidth of the same machine to
 * compare them with: a cell update of one stage reads eleven and writes three doubles, 112 bytes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class HeatBenchmark {

  /** Cells in a cube, edge length 2 mm each. */
  @Param({"20", "40", "60", "90"})
  public int edge;

  private Simulation simulation;
  private double timeS;

  /** Counts what was done beside how often. */
  @AuxCounters(AuxCounters.Type.EVENTS)
  @State(Scope.Thread)
  public static class Work {
    public double cellUpdates;
  }

  @Setup(Level.Iteration)
  public void hotCube() {
    double[] edges = Grading.uniform(0, 2.0 * edge, 2);
    Block cube =
        new Block(
            "cube",
            HeatMaterials.carbonSteel(),
            Frame.WORLD,
            new CartesianGrid(edges, edges, edges));
    HeatModel model =
        HeatModel.builder().block(cube).faces(StillAir.onFlats(100, 0.8)).build();
    simulation = new Simulation(model, new Fineness(0.25, 1e9, 0.5), 20);
    simulation.startAt(cube, p -> 20 + 600 * Math.exp(-p.x() / 30));
    simulation.begin(0.5);
    timeS = 0;
  }

  /** One step of 0.5 s of a cube of steel that cools in still air. */
  @Benchmark
  public double coolingStep(Work work) {
    long before = simulation.cellUpdates();
    timeS += 0.5;
    simulation.advanceTo(timeS);
    work.cellUpdates += simulation.cellUpdates() - before;
    return simulation.timeS();
  }
}
