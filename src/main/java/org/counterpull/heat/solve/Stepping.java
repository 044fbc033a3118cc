package org.counterpull.heat.solve;

import java.util.ArrayList;
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

  private final Fineness fineness;
  private final double ambientC;
  private final Rest rest;
  private final List<BlockField> fields;
  private final List<LinkTerms> links;
  private final Schedule schedule;
  private final Activity activity;
  private final BiConsumer<List<BlockField>, Double> afterStep;
  private final double[] lostJ = new double[SurfaceTerms.ACCOUNTS];
  private final Map<BlockField, Double> stiffness = new IdentityHashMap<>();
  private Group whole;
  private double timeS;
  private double inJ;
  private double nextStepS = SHORTEST_S;
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
      List<BlockField> blocks,
      BiConsumer<List<BlockField>, Double> afterStep) {
    this.fineness = fineness;
    this.ambientC = model.ambientC();
    this.schedule = new Schedule(model.sinks());
    this.rest = new Rest(blocks, fineness.quietK());
    this.fields = rest.stepped();
    this.links = rest.terms();
    this.afterStep = afterStep;
    this.activity = new Activity(fields, links, fineness.quietK());
    model.links().forEach(this::addLink);
  }

  void addLink(Link link) {
    rest.add(link);
    forget();
  }

  /** The state was changed from outside. */
  void forget() {
    whole = null;
    stiffness.clear();
  }

  void addSource(MovingSource source) {
    schedule.add(source);
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
    return schedule.energyJ(timeS);
  }

  double lostJ(int account) {
    return lostJ[account];
  }

  /** One step, not beyond a time. */
  void step(double targetS) {
    double limit = Math.min(targetS, schedule.nextEventS(timeS));
    List<MovingSource> burning = schedule.burning(timeS);
    if (burning.isEmpty()) {
      quietSteps(limit);
    } else {
      arcSteps(burning, limit);
    }
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
    double wanted = fineness.travelShare() * Schedule.resolvedS(burning, fields);
    double left = limitS - timeS;
    double step = left / Math.ceil(left / wanted - ROUNDING_S);
    int count = (int) Math.min(STEPS_IN_A_LONG_ONE, Math.round(left / step));
    wakeAndRest(burning, timeS + count * step);
    List<BlockField> moving = activity.moving(burning, timeS, timeS + count * step);
    if (count == 1 || !worthSplitting(moving)) {
      arcStep(whole(), burning, step);
    } else {
      Split split = new Split(moving, timeS);
      for (int n = 0; n < count; n++) {
        arcStep(split.fast, burning, step);
      }
      split.finish();
    }
    nextStepS = step;
  }

  private void wakeAndRest(List<MovingSource> burning, double toS) {
    if (rest.update(burning, timeS, toS)) {
      forget();
    }
  }

  private boolean worthSplitting(List<BlockField> moving) {
    int cells = moving.stream().mapToInt(f -> f.block().grid().cells()).sum();
    return fineness.quietK() > 0 && cells < WORTH_SPLITTING * whole().cells();
  }

  private void arcStep(Group group, List<MovingSource> burning, double step) {
    deposit(group.fields(), burning, step);
    group.at(timeS, step);
    group.rateAtStart();
    cellUpdates += group.stages(step);
    accept(group, step);
    timeS += step;
    steps++;
    afterStep.accept(rest.own(group.fields()), timeS);
  }

  /** Moving blocks take short steps; then the others take one long step with what came over. */
  private final class Split {
    private final Group fast;
    private final List<BlockField> waiting;
    private final List<Border> borders = new ArrayList<>();
    private final double startS;

    Split(List<BlockField> moving, double startS) {
      this.startS = startS;
      this.waiting = new ArrayList<>(fields);
      waiting.removeAll(moving);
      for (LinkTerms link : links) {
        boolean aMoves = moving.contains(link.a);
        if (aMoves != moving.contains(link.b)) {
          borders.add(new Border(link, aMoves));
        }
      }
      waiting.forEach(BlockField::hold);
      this.fast = new Group(moving, links, borders, stiffness(moving));
    }

    void finish() {
      double longStep = timeS - startS;
      borders.forEach(b -> b.give(longStep));
      Group slow = new Group(waiting, links, List.of(), stiffness(waiting));
      slow.at(startS, longStep);
      slow.rateAtStart();
      cellUpdates += slow.stages(longStep);
      accept(slow, longStep);
      afterStep.accept(rest.own(waiting), timeS);
    }
  }

  private void deposit(List<BlockField> into, List<MovingSource> burning, double stepS) {
    List<Block> blocks = into.stream().map(BlockField::block).toList();
    for (MovingSource source : burning) {
      for (Deposit.Share share : Deposit.between(blocks, source, timeS, timeS + stepS)) {
        into.get(share.block()).source()[share.cell()] += share.energyJ() / stepS;
        into.get(share.block()).fed();
        inJ += share.energyJ();
      }
    }
  }

  private void accept(Group group, double step) {
    group.accept(step, lostJ);
    group.fields().forEach(BlockField::unfed);
    rest.follow(group.fields());
  }

  /** Cools: blocks that still move fast take the steps that they need, the others a longer one. */
  private void quietSteps(double limitS) {
    double window = Math.min(limitS - timeS, STEPS_IN_A_LONG_ONE * nextStepS);
    wakeAndRest(List.of(), timeS + window);
    List<BlockField> moving = activity.moving(List.of(), timeS, timeS + window);
    if (moving.isEmpty() || !worthSplitting(moving)) {
      quietStep(whole(), limitS);
      return;
    }
    Split split = new Split(moving, timeS);
    double end = timeS + window;
    while (timeS < end - ROUNDING_S) {
      quietStep(split.fast, end);
    }
    split.finish();
  }

  private void quietStep(Group group, double limitS) {
    double left = limitS - timeS;
    double step = Math.min(nextStepS, fineness.longestStepS());
    step = step >= left ? left : Math.min(step, Math.max(left / 2, SHORTEST_S));
    boolean cut = step < nextStepS;
    group.at(timeS, step);
    group.rateAtStart();
    double error = trial(group, step);
    while (error > 1 && step > SHORTEST_S) {
      step = Math.max(SHORTEST_S, Math.max(0.2 * step, better(step, error)));
      cut = false;
      error = trial(group, step);
    }
    accept(group, step);
    double next = Math.max(SHORTEST_S, Math.min(GROWTH * step, better(step, error)));
    // A step that an event cut short says nothing against the length that went before it.
    nextStepS = cut ? Math.max(nextStepS, next) : next;
    timeS += step;
    steps++;
    afterStep.accept(rest.own(group.fields()), timeS);
  }

  private double trial(Group group, double step) {
    cellUpdates += group.stages(step);
    return group.error(step, ambientC, fineness.toleranceK());
  }

  private static double better(double step, double error) {
    return 0.8 * step / Math.cbrt(Math.max(error, 1e-6));
  }
}
