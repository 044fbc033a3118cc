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
import org.counterpull.heat.source.Deposit;
import org.counterpull.heat.source.MovingSource;

/**
 * A model on its way through time.
 *
 * <p>Arcs are struck and weld metal is laid while it goes: {@link #strike} and {@link #lay} at or
 * after the present time, then {@link #advanceTo} or {@link #advanceUntil}. Deterministic; not for
 * use by several threads at once.
 */
public final class Simulation {
  private static final double ROUNDING_S = 1e-9;
  private static final double SHORTEST_S = 1e-4;
  private static final double GROWTH = 3;

  private final HeatModel model;
  private final Fineness fineness;
  private final List<BlockField> fields = new ArrayList<>();
  private final Map<Block, BlockField> byBlock = new IdentityHashMap<>();
  private final List<LinkTerms> links = new ArrayList<>();
  private final List<MovingSource> sources = new ArrayList<>();
  private final List<Probe> probes = new ArrayList<>();
  private final Activity activity;
  private final double[] lostJ = new double[SurfaceTerms.ACCOUNTS];
  private Progress progress = Progress.NONE;
  private double timeS;
  private double storedAtStartJ;
  private double inJ;
  private double nextStepS = SHORTEST_S;
  private int steps;
  private long cellUpdates;
  private boolean ratesKnown;
  private Group whole;

  /** Starts a model at time 0 with all metal at one temperature. */
  public Simulation(HeatModel model, Fineness fineness, double startC) {
    this.model = model;
    this.fineness = fineness;
    Map<Patch, Double> covered = model.coveredMm2();
    for (Block block : model.blocks()) {
      BlockField field = new BlockField(block, new SurfaceTerms(model, block, covered), startC);
      fields.add(field);
      byBlock.put(block, field);
    }
    model.links().forEach(this::addLink);
    this.activity = new Activity(fields, links);
    this.storedAtStartJ = energyJ();
  }

  private void addLink(Link link) {
    links.add(new LinkTerms(link, byBlock.get(link.a()), byBlock.get(link.b())));
    whole = null;
    ratesKnown = false;
  }

  /** Sets the temperature of a block at time 0 from place to place. */
  public void startAt(Block block, ToDoubleFunction<Vec3> temperatureC) {
    if (timeS > 0) {
      throw new IllegalStateException("temperatures are given at the start only");
    }
    double[] now = byBlock.get(block).now();
    for (int p = block.first(); p < block.end(); p++) {
      double temp = temperatureC.applyAsDouble(block.centre(p));
      now[p] = block.material().enthalpyJPerMm3(temp);
    }
    System.arraycopy(now, 0, byBlock.get(block).peak(), 0, now.length);
    storedAtStartJ = energyJ();
    ratesKnown = false;
  }

  /** Length of the first step, where it is known to be good; otherwise it is felt for. */
  void begin(double stepS) {
    nextStepS = stepS;
  }

  /** Lets somebody watch, and stop it. */
  public void watch(Progress watcher) {
    this.progress = watcher;
  }

  /** Strikes an arc at the source's start, not before the present. */
  public void strike(MovingSource source) {
    if (source.startS() < timeS - ROUNDING_S) {
      throw new IllegalArgumentException(
          source.name() + " would start at " + source.startS() + " s, but it is " + timeS + " s");
    }
    sources.add(source);
  }

  /** Lays weld metal, or any other link, at its own time. */
  public void lay(Link link) {
    model.requireOwn(link.a());
    model.requireOwn(link.b());
    addLink(link);
  }

  /** Notes the temperature at a point of a block from now on. */
  public Probe probe(String name, Block block, Vec3 point) {
    Probe probe = new Probe(name, point, byBlock.get(block), timeS);
    probes.add(probe);
    return probe;
  }

  /** Notes the temperature at a point of the block that is nearest to it. */
  public Probe probe(String name, Vec3 point) {
    return probe(name, nearest(point), point);
  }

  private Block nearest(Vec3 point) {
    Block best = model.blocks().get(0);
    for (Block block : model.blocks()) {
      if (block.distanceMm(point) < best.distanceMm(point)) {
        best = block;
      }
    }
    return best;
  }

  /** Present time. */
  public double timeS() {
    return timeS;
  }

  /** Steps so far. */
  public int steps() {
    return steps;
  }

  /** Cells times stages so far. */
  public long cellUpdates() {
    return cellUpdates;
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

  /** Highest temperature of a cell so far. */
  public double peakC(Block block, int cell) {
    return block.material().tempC(byBlock.get(block).peak()[cell]);
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
    double asked = 0;
    for (MovingSource source : sources) {
      asked += source.energyJ(0, timeS);
    }
    return new EnergyBalance(asked, inJ, energyJ() - storedAtStartJ, lostJ[0], lostJ[1]);
  }

  private double energyJ() {
    double sum = 0;
    for (BlockField field : fields) {
      sum += field.energyJ();
    }
    return sum;
  }

  /** Goes on to a time. */
  public void advanceTo(double targetS) {
    while (timeS < targetS - ROUNDING_S) {
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
      if (timeS >= latestS - ROUNDING_S) {
        return false;
      }
      step(Math.min(latestS, timeS + longestS));
    }
    return true;
  }

  private void step(double targetS) {
    double limit = Math.min(targetS, nextEventS());
    List<MovingSource> burning =
        sources.stream().filter(s -> s.burns(timeS, timeS + ROUNDING_S)).toList();
    if (burning.isEmpty()) {
      quietStep(limit);
    } else {
      arcStep(burning, limit);
    }
    for (Probe probe : probes) {
      if (activity.atTime(probe.field(), timeS)) {
        probe.record(timeS);
      }
    }
    if (!progress.goOn(timeS)) {
      throw new Progress.StoppedException(timeS);
    }
  }

  /** The next moment at which something is switched. */
  private double nextEventS() {
    double next = Double.POSITIVE_INFINITY;
    for (MovingSource source : sources) {
      next = earlier(next, source.startS());
      next = earlier(next, source.endS());
    }
    for (Sink sink : model.sinks()) {
      next = earlier(next, sink.fromS());
      next = earlier(next, sink.toS());
    }
    return next;
  }

  private double earlier(double next, double eventS) {
    return eventS > timeS + ROUNDING_S ? Math.min(next, eventS) : next;
  }

  private Group whole() {
    if (whole == null) {
      whole = new Group(fields, links, List.of(), Stiffness.of(fields, links));
    }
    return whole;
  }

  private void arcStep(List<MovingSource> burning, double limitS) {
    double wanted = Double.POSITIVE_INFINITY;
    for (MovingSource source : burning) {
      wanted = Math.min(wanted, stepS(source));
    }
    double left = limitS - timeS;
    double step = left / Math.ceil(left / wanted - ROUNDING_S);
    Group group = whole();
    deposit(burning, step);
    group.at(timeS, step);
    group.rateAtStart();
    finish(group, step, true);
    nextStepS = step;
    ratesKnown = false;
  }

  /** Step that resolves the travel of a source and the spread of its heat. */
  private double stepS(MovingSource source) {
    double length = source.shape().lengthMm();
    double diffusivity = 0;
    for (BlockField field : fields) {
      diffusivity = Math.max(diffusivity, field.material().greatestDiffusivityMm2PerS());
    }
    double spread = length * length / (4 * diffusivity);
    double speed = source.travelSpeedMmPerS();
    return fineness.travelShare() * (speed > 0 ? Math.min(spread, length / speed) : spread);
  }

  private void deposit(List<MovingSource> burning, double stepS) {
    List<Block> blocks = model.blocks();
    for (MovingSource source : burning) {
      for (Deposit.Share share : Deposit.between(blocks, source, timeS, timeS + stepS)) {
        fields.get(share.block()).source()[share.cell()] += share.energyJ() / stepS;
        inJ += share.energyJ();
      }
    }
  }

  private void quietStep(double limitS) {
    Group group = whole();
    double left = limitS - timeS;
    double step = Math.min(nextStepS, fineness.longestStepS());
    step = step >= left ? left : Math.min(step, Math.max(left / 2, SHORTEST_S));
    group.at(timeS, step);
    if (!ratesKnown) {
      group.rateAtStart();
    }
    while (true) {
      group.stages(step);
      double error = group.errorK(step) / fineness.toleranceK();
      double better = 0.8 * step / Math.cbrt(Math.max(error, 1e-6));
      if (error <= 1 || step <= SHORTEST_S) {
        finish(group, step, false);
        boolean cut = step < nextStepS;
        double next = Math.max(SHORTEST_S, Math.min(GROWTH * step, better));
        // A step that an event cut short says nothing against the length that went before it.
        nextStepS = cut ? Math.max(nextStepS, next) : next;
        return;
      }
      step = Math.max(SHORTEST_S, Math.max(0.2 * step, better));
      nextStepS = step;
    }
  }

  private void finish(Group group, double step, boolean needsStages) {
    long before = group.cellUpdates();
    if (needsStages) {
      group.stages(step);
    }
    group.accept(lostJ);
    if (!needsStages) {
      group.reuseRates();
      ratesKnown = !conditionsChange(timeS, step);
    }
    fields.forEach(f -> java.util.Arrays.fill(f.source(), 0));
    cellUpdates += group.cellUpdates() - before;
    timeS += step;
    steps++;
  }

  private boolean conditionsChange(double startS, double stepS) {
    double end = startS + stepS;
    for (Sink sink : model.sinks()) {
      if (sink.on(startS + 0.5 * stepS) != sink.on(end + ROUNDING_S)) {
        return true;
      }
    }
    for (LinkTerms link : links) {
      if (!link.laid() && link.link.fromS() <= end + fineness.longestStepS()) {
        return true;
      }
    }
    return false;
  }
}
