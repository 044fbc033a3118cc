package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.source.MovingSource;

/**
 * A model on its way through time.
 *
 * <p>Arcs are struck and weld metal is laid while it goes: {@link #strike} and {@link #lay} at or
 * after the present time, then {@link #advanceTo} or {@link #advanceUntil}. Deterministic; not for
 * use by several threads at once.
 */
public final class Simulation {
  private final HeatModel model;
  private final List<BlockField> fields = new ArrayList<>();
  private final Map<Block, BlockField> byBlock = new IdentityHashMap<>();
  private final List<Probe> probes = new ArrayList<>();
  private final Stepping stepping;
  private Progress progress = Progress.NONE;
  private double storedAtStartJ;

  /** Starts a model at time 0 with all metal at one temperature. */
  public Simulation(HeatModel model, Fineness fineness, double startC) {
    this.model = model;
    Map<Patch, Double> covered = model.coveredMm2();
    for (Block block : model.blocks()) {
      BlockField field = new BlockField(block, SurfaceTerms.of(model, block, covered), startC);
      fields.add(field);
      byBlock.put(block, field);
    }
    this.stepping = new Stepping(model, fineness, fields, this::note);
    this.storedAtStartJ = energyJ();
  }

  /** Sets the temperature of a block at time 0 from place to place. */
  public void startAt(Block block, ToDoubleFunction<Vec3> temperatureC) {
    if (timeS() > 0) {
      throw new IllegalStateException("temperatures are given at the start only");
    }
    double[] now = byBlock.get(block).now();
    for (int p = block.first(); p < block.end(); p++) {
      double temp = temperatureC.applyAsDouble(block.centre(p));
      now[p] = block.material().enthalpyJPerMm3(temp);
    }
    System.arraycopy(now, 0, byBlock.get(block).peak(), 0, now.length);
    storedAtStartJ = energyJ();
    stepping.forget();
  }

  /** Length of the first step, where it is known to be good; otherwise it is felt for. */
  void begin(double stepS) {
    stepping.beginWith(stepS);
  }

  /** Lets somebody watch, and stop it. */
  public void watch(Progress watcher) {
    this.progress = watcher;
  }

  /** Strikes an arc at the source's start, not before the present. */
  public void strike(MovingSource source) {
    if (source.startS() < timeS() - Stepping.ROUNDING_S) {
      throw new IllegalArgumentException(
          source.name() + " would start at " + source.startS() + " s, but it is " + timeS() + " s");
    }
    stepping.addSource(source);
  }

  /** Lays weld metal, or any other link that covers no face, at its own time. */
  public void lay(Link link) {
    model.requireOwn(link.a());
    model.requireOwn(link.b());
    if (link.law().covers()) {
      throw new IllegalArgumentException(
          link.name() + " covers faces: it belongs to the model from its start");
    }
    stepping.addLink(link);
  }

  /** Notes the temperature at a point of a block from now on. */
  public Probe probe(String name, Block block, Vec3 point) {
    Probe probe = new Probe(name, point, byBlock.get(block), timeS());
    probes.add(probe);
    return probe;
  }

  /** Notes the temperature at a point of the block that is nearest to it. */
  public Probe probe(String name, Vec3 point) {
    Block best = model.blocks().get(0);
    for (Block block : model.blocks()) {
      if (block.distanceMm(point) < best.distanceMm(point)) {
        best = block;
      }
    }
    return probe(name, best, point);
  }

  /** Present time. */
  public double timeS() {
    return stepping.timeS();
  }

  /** Steps so far. */
  public int steps() {
    return stepping.steps();
  }

  /** Cells times stages so far. */
  public long cellUpdates() {
    return stepping.cellUpdates();
  }

  public HeatModel model() {
    return model;
  }

  public List<Probe> probes() {
    return Collections.unmodifiableList(probes);
  }

  /** Present temperature at a point of a block. */
  public double temperatureC(Block block, Vec3 point) {
    double[] now = byBlock.get(block).now();
    return block.interpolation(point).of(p -> block.material().tempC(now[p]));
  }

  /** Present temperature of a cell. */
  public double temperatureC(Block block, int cell) {
    return block.material().tempC(byBlock.get(block).now()[cell]);
  }

  /** Highest temperature of a cell so far, or since peaks were last forgotten. */
  public double peakC(Block block, int cell) {
    return block.material().tempC(byBlock.get(block).peak()[cell]);
  }

  /** Lets peaks count from the present on. */
  public void forgetPeaks() {
    for (BlockField field : fields) {
      System.arraycopy(field.now(), 0, field.peak(), 0, field.peak().length);
    }
  }

  /** Highest present temperature anywhere. */
  public double hottestC() {
    double hottest = Double.NEGATIVE_INFINITY;
    for (BlockField field : fields) {
      double most = Double.NEGATIVE_INFINITY;
      double[] volume = field.block().volumeMm3();
      for (int p = field.block().first(); p < field.block().end(); p++) {
        most = volume[p] > 0 ? Math.max(most, field.now()[p]) : most;
      }
      hottest = Math.max(hottest, field.material().tempC(most));
    }
    return hottest;
  }

  /** Where the heat went so far. */
  public EnergyBalance balance() {
    return new EnergyBalance(
        stepping.askedJ(),
        stepping.inJ(),
        energyJ() - storedAtStartJ,
        stepping.lostJ(SurfaceTerms.AIR),
        stepping.lostJ(SurfaceTerms.BODIES));
  }

  private double energyJ() {
    return fields.stream().mapToDouble(BlockField::energyJ).sum();
  }

  /** Goes on to a time. */
  public void advanceTo(double targetS) {
    while (timeS() < targetS - Stepping.ROUNDING_S) {
      step(targetS);
    }
  }

  /**
   * Goes on until something holds at the end of a step, or to a time.
   *
   * @param enough looked at now and after each step
   * @param latestS time at which it stops in any case
   * @param longestS longest step meanwhile: how finely the moment is found
   * @return whether it held
   */
  public boolean advanceUntil(Predicate<Simulation> enough, double latestS, double longestS) {
    while (!enough.test(this)) {
      if (timeS() >= latestS - Stepping.ROUNDING_S) {
        return false;
      }
      step(Math.min(latestS, timeS() + longestS));
    }
    return true;
  }

  private void step(double targetS) {
    stepping.step(targetS);
    if (!progress.goOn(timeS())) {
      throw new Progress.StoppedException(timeS());
    }
  }

  private void note(List<BlockField> moved, double timeS) {
    for (Probe probe : probes) {
      if (moved.contains(probe.field())) {
        probe.record(timeS);
      }
    }
  }
}
