package org.counterpull.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * What runs do to the readings in any order, for a search that tries many.
 *
 * <p>Two facts make it fast. The stiffness after some runs depends on which they are and not on
 * their order, so what a run does depends only on the set of runs before it: it is worked out once
 * per set and kept. And what it does is linear in the tensions that the tacks and fixtures carry,
 * so an order that was changed in one place is worked out again only there. Coordinates that no
 * later run needs are dropped on the way. Nothing is ever factorised anew.
 */
public final class RunSequence {
  /** Numbers kept in the stiffness matrices of milestones at most, 8 bytes each: 200 MB. */
  private static final long MOST_NUMBERS_OF_MILESTONES = 25_000_000;

  /** The same of the structures met last: 64 MB. */
  private static final long MOST_NUMBERS_MET_LAST = 8_000_000;

  private static final long MOST_NUMBERS_OF_EFFECTS = 10_000_000;

  private final List<Run> runs;
  private final List<Integer> releasedAtEnd;
  private final int readings;
  private final int[] remembered;
  private final List<List<Integer>> tensions;
  private final double[] initialMemory;
  private final Structure base;
  private final int runsPerMilestone;
  private final Recent<BitSet, Structure> milestones =
      new Recent<>(MOST_NUMBERS_OF_MILESTONES, RunSequence::numbers);
  private final Recent<BitSet, Structure> metLast =
      new Recent<>(MOST_NUMBERS_MET_LAST, RunSequence::numbers);
  private final Recent<EffectKey, Effect> effects =
      new Recent<>(MOST_NUMBERS_OF_EFFECTS, Effect::numbers);
  private long laid;

  /**
   * A search over the order of runs.
   *
   * @param fitted the structure as fitted up: everything tacked or clamped, nothing loose
   * @param runs the runs to put in order
   * @param releasedAtEnd links of fixtures that are taken out once all is welded, in that order
   * @param readings how many readings the assembly has
   */
  public RunSequence(Structure fitted, List<Run> runs, List<Integer> releasedAtEnd, int readings) {
    this.runs = List.copyOf(runs);
    this.releasedAtEnd = List.copyOf(releasedAtEnd);
    this.readings = readings;
    CoordinateSpace space = fitted.space();
    List<Integer> memory = new ArrayList<>();
    IntStream.range(0, readings).forEach(r -> memory.add(space.reading(r)));
    this.tensions = new ArrayList<>();
    for (Run run : this.runs) {
      tensions.add(tensionsIn(fitted, letGo(fitted, run), memory));
    }
    tensions.add(tensionsIn(fitted, this.releasedAtEnd, memory));
    this.remembered = memory.stream().mapToInt(Integer::intValue).toArray();
    this.initialMemory = new double[remembered.length];
    for (int i = 0; i < remembered.length; i++) {
      initialMemory[i] = fitted.moved(remembered[i]);
    }
    this.base = fitted.followed(followedAfter(new BitSet(), space), 0);
    // As runs are laid the matrices shrink: a whole order's add up to a third of as many of the
    // first.
    long wholeOrder = numbers(base) * this.runs.size() / 3;
    this.runsPerMilestone = (int) (1 + wholeOrder / (MOST_NUMBERS_OF_MILESTONES * 2 / 3));
  }

  private static long numbers(Structure structure) {
    return 1 + (long) structure.followedCount() * structure.followedCount() / 2;
  }

  /** Places in the memory where the tensions of the given links lie; adds them to it. */
  private static List<Integer> tensionsIn(
      Structure fitted, List<Integer> links, List<Integer> memory) {
    List<Integer> places = new ArrayList<>();
    for (int link : links) {
      for (int component : fitted.components(link)) {
        places.add(memory.size());
        memory.add(fitted.space().link(link, component));
      }
    }
    return List.copyOf(places);
  }

  private static List<Integer> letGo(Structure fitted, Run run) {
    TreeSet<Integer> links = new TreeSet<>();
    for (Segment segment : run.segments()) {
      links.addAll(segment.remelts());
      if (fitted.closed(segment.link())) {
        links.add(segment.link());
      }
    }
    return List.copyOf(links);
  }

  /** How many runs there are. */
  public int count() {
    return runs.size();
  }

  /** How many runs have been laid so far, those found in memory not counted. */
  public long laid() {
    return laid;
  }

  /** Before the first run. */
  public State start() {
    return new State(null, -1, false, new BitSet(), initialMemory);
  }

  /** After one more run. */
  public State after(State before, int run, boolean reversed) {
    if (before.done.get(run)) {
      throw new IllegalArgumentException("run " + runs.get(run).name() + " is welded already");
    }
    BitSet done = (BitSet) before.done.clone();
    done.set(run);
    Effect effect = effect(before, run, reversed);
    return new State(before, run, reversed, done, effect.on(before.memory));
  }

  /** Readings as the structure stands, fixtures still on, mm and rad. */
  public double[] readings(State state) {
    return Arrays.copyOf(state.memory, readings);
  }

  /** Readings once all is welded and the fixtures are off. */
  public double[] readingsAtEnd(State whole) {
    if (whole.done.cardinality() != runs.size()) {
      throw new IllegalArgumentException("the fixtures come off when all runs are welded");
    }
    if (releasedAtEnd.isEmpty()) {
      return readings(whole);
    }
    return Arrays.copyOf(effect(whole, runs.size(), false).on(whole.memory), readings);
  }

  /** All that is carried from run to run: the readings first, then tensions that will be let go. */
  public double[] carried(State state) {
    return state.memory.clone();
  }

  /**
   * Readings with the fixtures off for numbers that would be carried after the last run.
   *
   * @throws IllegalStateException before any whole order was worked out
   */
  public double[] readingsAtEnd(double[] carried) {
    if (releasedAtEnd.isEmpty()) {
      return Arrays.copyOf(carried, readings);
    }
    BitSet all = new BitSet();
    all.set(0, runs.size());
    Effect release =
        effects
            .find(new EffectKey(all, runs.size(), false))
            .orElseThrow(() -> new IllegalStateException("no whole order was worked out yet"));
    return Arrays.copyOf(release.on(carried), readings);
  }

  /**
   * What would be carried after one more run, where that run was worked out before on the same set
   * of runs; empty where it would have to be laid.
   */
  public Optional<double[]> carriedIfKnown(
      BitSet done, double[] carried, int run, boolean reversed) {
    return effects.find(new EffectKey(done, run, reversed)).map(effect -> effect.on(carried));
  }

  private Effect effect(State before, int run, boolean reversed) {
    EffectKey key = new EffectKey(before.done, run, reversed);
    return effects
        .find(key)
        .orElseGet(
            () -> {
              lay(before, run, reversed);
              return effects.find(key).orElseThrow();
            });
  }

  /** Lays a run on the structure before it; keeps what it did and the structure after it. */
  private Structure lay(State before, int run, boolean reversed) {
    List<Integer> letGo = tensions.get(run);
    Structure structure = structure(before).refollowed(1 + letGo.size());
    for (int k = 0; k < letGo.size(); k++) {
      structure.setTension(remembered[letGo.get(k)], 1 + k, 1);
    }
    if (run == runs.size()) {
      releasedAtEnd.forEach(structure::release);
    } else {
      runs.get(run).layOn(structure, reversed, 0);
    }
    laid++;
    effects.keep(new EffectKey(before.done, run, reversed), effectOf(structure, letGo));
    BitSet done = (BitSet) before.done.clone();
    done.set(run);
    Structure next = structure.followed(followedAfter(done, structure.space()), 0);
    if (run < runs.size()) {
      boolean milestone = done.cardinality() % runsPerMilestone == 0;
      (milestone ? milestones : metLast).keep(done, next);
    }
    return next;
  }

  private Effect effectOf(Structure structure, List<Integer> letGo) {
    double[] own = new double[remembered.length];
    double[][] perTension = new double[letGo.size()][remembered.length];
    for (int i = 0; i < remembered.length; i++) {
      if (letGo.contains(i) || !structure.follows(remembered[i])) {
        continue;
      }
      own[i] = structure.moved(remembered[i], 0);
      for (int k = 0; k < letGo.size(); k++) {
        perTension[k][i] = structure.moved(remembered[i], 1 + k);
      }
    }
    return new Effect(letGo.stream().mapToInt(Integer::intValue).toArray(), own, perTension);
  }

  private Structure structure(State state) {
    if (state.before == null) {
      return base;
    }
    return milestones
        .find(state.done)
        .or(() -> metLast.find(state.done))
        .orElseGet(() -> lay(state.before, state.run, state.reversed));
  }

  /** Coordinates that the runs still to come, the readings and the last release need. */
  private int[] followedAfter(BitSet done, CoordinateSpace space) {
    TreeSet<Integer> followed = new TreeSet<>();
    IntStream.range(0, readings).forEach(r -> followed.add(space.reading(r)));
    for (int r = 0; r <= runs.size(); r++) {
      if (!done.get(r)) {
        tensions.get(r).forEach(place -> followed.add(remembered[place]));
      }
    }
    for (int r = 0; r < runs.size(); r++) {
      if (!done.get(r)) {
        follow(runs.get(r), followed, space);
      }
    }
    return followed.stream().mapToInt(Integer::intValue).toArray();
  }

  private static void follow(Run run, TreeSet<Integer> followed, CoordinateSpace space) {
    for (Segment segment : run.segments()) {
      segment.loads().forEach(load -> followed.add(space.load(load)));
      for (int c : segment.coldComponents()) {
        followed.add(space.link(segment.link(), c));
      }
    }
    for (List<Pull> other : run.beside()) {
      for (Pull pull : other) {
        IntStream.range(0, 6).forEach(c -> followed.add(space.link(pull.link(), c)));
      }
    }
  }

  /** The structure after some runs, by how it came about. */
  public static final class State {
    private final State before;
    private final int run;
    private final boolean reversed;
    private final BitSet done;
    private final double[] memory;

    private State(State before, int run, boolean reversed, BitSet done, double[] memory) {
      this.before = before;
      this.run = run;
      this.reversed = reversed;
      this.done = done;
      this.memory = memory;
    }
  }

  private record EffectKey(BitSet done, int run, boolean reversed) {}

  /** What a run adds to the memory: by itself, and per tension that it lets go. */
  private record Effect(int[] letGo, double[] own, double[][] perTension) {
    long numbers() {
      return (1L + letGo.length) * own.length + 16;
    }

    double[] on(double[] memory) {
      double[] after = memory.clone();
      for (int i = 0; i < after.length; i++) {
        after[i] += own[i];
      }
      for (int k = 0; k < letGo.length; k++) {
        double tension = memory[letGo[k]];
        for (int i = 0; i < after.length; i++) {
          after[i] += perTension[k][i] * tension;
        }
      }
      for (int place : letGo) {
        after[place] = 0;
      }
      return after;
    }
  }
}
