package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.source.Deposit;
import org.counterpull.heat.source.MovingSource;

/** Cuts time into steps: short ones while an arc burns, as long as the error allows otherwise. */
final class Stepping {
  static final double ROUNDING_S = 1e-9;
  private static final double SHORTEST_S = 1e-4;
  private static final double GROWTH = 3;

  /** Short steps that a waiting block lets pass. */
  private static final int STEPS_IN_A_LONG_ONE = 8;

  /** Above this share of moving cells, all are stepped alike. */
  private static final double WORTH_SPLITTING = 0.8;

  private static final double QUIET_TOLERANCES = 10;

  private final Fineness fineness;
  private final List<Sink> sinks;
  private final List<BlockField> fields;
  private final List<LinkTerms> links = new ArrayList<>();
  private final List<MovingSource> sources = new ArrayList<>();
  private final Activity activity;
  private final BiConsumer<List<BlockField>, Double> afterStep;
  private final double[] lostJ = new double[SurfaceTerms.ACCOUNTS];
  private final Map<BlockField, Double> stiffness = new IdentityHashMap<>();
  private Group whole;
  private double timeS;
  private double inJ;
  private double nextStepS = SHORTEST_S;
  private boolean ratesKnown;
  private int steps;
  private long cellUpdates;

  /**
   * Stepping from time 0.
   *
   * @param afterStep told which blocks have come to which time
   */
  Stepping(
      HeatModel model,
      Fineness fineness,
      List<BlockField> fields,
      BiConsumer<List<BlockField>, Double> afterStep) {
    this.fineness = fineness;
    this.sinks = model.sinks();
    this.fields = fields;
    this.afterStep = afterStep;
    this.activity = new Activity(fields, links, QUIET_TOLERANCES * fineness.toleranceK());
    model.links().forEach(this::addLink);
  }

  void addLink(Link link) {
    links.add(new LinkTerms(link, field(link.a()), field(link.b())));
    forget();
  }

  /** The state was changed from outside. */
  void forget() {
    whole = null;
    stiffness.clear();
    ratesKnown = false;
  }

  private BlockField field(Block block) {
    return fields.stream().filter(f -> f.block() == block).findFirst().orElseThrow();
  }

  void addSource(MovingSource source) {
    sources.add(source);
  }

  void beginWith(double stepS) {
    nextStepS = stepS;
  }

  double timeS() {
    return timeS;
  }

  int steps() {
    return steps;
  }

  long cellUpdates() {
    return cellUpdates;
  }

  double inJ() {
    return inJ;
  }

  double askedJ() {
    return sources.stream().mapToDouble(s -> s.energyJ(0, timeS)).sum();
  }

  double lostJ(int account) {
    return lostJ[account];
  }

  /** One step, not beyond a time. */
  void step(double targetS) {
    double limit = Math.min(targetS, nextEventS());
    List<MovingSource> burning =
        sources.stream().filter(s -> s.burns(timeS, timeS + ROUNDING_S)).toList();
    if (burning.isEmpty()) {
      quietStep(limit);
    } else {
      arcSteps(burning, limit);
    }
  }

  /** The next moment at which something is switched. */
  private double nextEventS() {
    double next = Double.POSITIVE_INFINITY;
    for (MovingSource source : sources) {
      next = earlier(next, source.startS());
      next = earlier(next, source.endS());
    }
    for (Sink sink : sinks) {
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
      whole = new Group(fields, links, List.of(), stiffness(fields));
    }
    return whole;
  }

  private double stiffness(List<BlockField> some) {
    if (stiffness.isEmpty()) {
      stiffness.putAll(Stiffness.byField(fields, links));
    }
    return some.stream().mapToDouble(stiffness::get).max().orElse(0);
  }

  private void arcSteps(List<MovingSource> burning, double limitS) {
    double wanted = Double.POSITIVE_INFINITY;
    for (MovingSource source : burning) {
      wanted = Math.min(wanted, stepS(source));
    }
    double left = limitS - timeS;
    double step = left / Math.ceil(left / wanted - ROUNDING_S);
    int count = (int) Math.min(STEPS_IN_A_LONG_ONE, Math.round(left / step));
    List<BlockField> moving = activity.moving(burning, timeS, timeS + count * step);
    int cells = moving.stream().mapToInt(f -> f.block().grid().cells()).sum();
    if (count == 1 || cells > WORTH_SPLITTING * whole().cells()) {
      arcStep(whole(), burning, step);
    } else {
      split(moving, burning, step, count);
    }
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

  private void arcStep(Group group, List<MovingSource> burning, double step) {
    deposit(group.fields(), burning, step);
    group.at(timeS, step);
    group.rateAtStart();
    cellUpdates += group.stages(step);
    accept(group, step);
    timeS += step;
    steps++;
    afterStep.accept(group.fields(), timeS);
  }

  /** Moving blocks take short steps; then the others take one long step with what came over. */
  private void split(List<BlockField> moving, List<MovingSource> burning, double step, int count) {
    List<BlockField> waiting = new ArrayList<>(fields);
    waiting.removeAll(moving);
    List<Border> borders = new ArrayList<>();
    for (LinkTerms link : links) {
      boolean aMoves = moving.contains(link.a);
      if (aMoves != moving.contains(link.b)) {
        borders.add(new Border(link, aMoves));
      }
    }
    for (BlockField field : waiting) {
      field.begin(0);
      field.begin(1);
    }
    double startS = timeS;
    Group fast = new Group(moving, links, borders, stiffness(moving));
    for (int n = 0; n < count; n++) {
      arcStep(fast, burning, step);
    }
    double longStep = timeS - startS;
    borders.forEach(b -> b.give(longStep));
    Group slow = new Group(waiting, links, List.of(), stiffness(waiting));
    slow.at(startS, longStep);
    slow.rateAtStart();
    cellUpdates += slow.stages(longStep);
    accept(slow, longStep);
    afterStep.accept(waiting, timeS);
  }

  private void deposit(List<BlockField> into, List<MovingSource> burning, double stepS) {
    List<Block> blocks = into.stream().map(BlockField::block).toList();
    for (MovingSource source : burning) {
      for (Deposit.Share share : Deposit.between(blocks, source, timeS, timeS + stepS)) {
        into.get(share.block()).source()[share.cell()] += share.energyJ() / stepS;
        inJ += share.energyJ();
      }
    }
  }

  private void accept(Group group, double step) {
    group.accept(step, lostJ);
    group.fields().forEach(f -> Arrays.fill(f.source(), 0));
  }

  private void quietStep(double limitS) {
    Group group = whole();
    double left = limitS - timeS;
    double step = Math.min(nextStepS, fineness.longestStepS());
    step = step >= left ? left : Math.min(step, Math.max(left / 2, SHORTEST_S));
    boolean cut = step < nextStepS;
    group.at(timeS, step);
    if (!ratesKnown) {
      group.rateAtStart();
    }
    double error = trial(group, step);
    while (error > 1 && step > SHORTEST_S) {
      step = Math.max(SHORTEST_S, Math.max(0.2 * step, better(step, error)));
      cut = false;
      error = trial(group, step);
    }
    accept(group, step);
    group.reuseRates();
    ratesKnown = !conditionsChange(step);
    double next = Math.max(SHORTEST_S, Math.min(GROWTH * step, better(step, error)));
    // A step that an event cut short says nothing against the length that went before it.
    nextStepS = cut ? Math.max(nextStepS, next) : next;
    timeS += step;
    steps++;
    afterStep.accept(fields, timeS);
  }

  private double trial(Group group, double step) {
    cellUpdates += group.stages(step);
    return group.errorK(step) / fineness.toleranceK();
  }

  private static double better(double step, double error) {
    return 0.8 * step / Math.cbrt(Math.max(error, 1e-6));
  }

  /** Whether the next step may find other sinks or links than this one had. */
  private boolean conditionsChange(double stepS) {
    double end = timeS + stepS;
    for (Sink sink : sinks) {
      if (sink.on(timeS + 0.5 * stepS) != sink.on(end + ROUNDING_S)) {
        return true;
      }
    }
    return links.stream()
        .anyMatch(l -> !l.laid() && l.link.fromS() <= end + fineness.longestStepS());
  }
}
