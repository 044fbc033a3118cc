package org.counterpull.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.Lay;
import org.counterpull.jointplan.RunPlan;

/**
 * Chooses the next run by published rules, and keeps the reasons.
 *
 * <p>Of the runs that no rule holds back: first what the file writes down, then what needs no
 * moving and no turning over, then butts, then what lies nearest to the stiff middle, then the
 * joint with the fewest runs in, then what balances the heat about the neutral axes, then the name.
 * A run that would have to wait gives way to one that need not, where that costs less.
 *
 * <p><b>Source:</b> AWS D1.1:2015, 5.20 and 5.19, from memory; Blodgett, Design of Welded
 * Structures, from memory; batching by orientation: common practice, no source.
 */
final class RunPicker {
  private final RunFacts facts;
  private final Deque<String> given;
  private final Map<String, Integer> runsIn = new TreeMap<>();
  private final List<String> reasons = new ArrayList<>();
  private final List<String> alike = new ArrayList<>();
  private final Set<RunCriterion> criteria = EnumSet.noneOf(RunCriterion.class);
  private RunCriterion alikeBy = RunCriterion.NAME;
  private Vector3D momentJMm = Vector3D.ZERO;

  RunPicker(RunFacts facts) {
    this(facts, List.of());
  }

  /** A picker that repeats an order, without reasons of its own. */
  RunPicker(RunFacts facts, List<String> given) {
    this.facts = facts;
    this.given = new ArrayDeque<>(given);
  }

  /** Where and how the work lies when the next run is chosen. */
  record Bench(String place, Lay lay) {}

  private record Scored(Step step, long[] marks) {}

  /**
   * The next run.
   *
   * @param ready weld steps that no rule holds back, at least one
   * @param bench where and how the work lies
   * @param waitS how long a run would have to wait
   */
  Step next(List<Step> ready, Bench bench, ToDoubleFunction<RunPlan> waitS) {
    if (!given.isEmpty()) {
      String next = given.remove();
      return ready.stream().filter(step -> name(step).equals(next)).findFirst().orElseThrow();
    }
    List<Scored> best = new ArrayList<>();
    for (Step step : ready) {
      best.add(new Scored(step, marks(step, bench)));
    }
    best.sort(
        Comparator.<Scored, long[]>comparing(Scored::marks, RunPicker::compare)
            .thenComparing(scored -> scored.step().id()));
    Step first = best.get(0).step();
    Optional<Step> elsewhere = elsewhere(best, bench, waitS);
    if (elsewhere.isPresent()) {
      tellAlike();
      reasons.add(
          String.format(
              Locale.ROOT,
              "%s goes before %s, which would have to wait; working elsewhere first costs less.",
              name(elsewhere.get()),
              name(first)));
    } else {
      note(first, best.size() == 1 ? RunCriterion.ONLY : decided(best.get(0), best.get(1)));
    }
    Step chosen = elsewhere.orElse(first);
    RunPlan run = chosen.run().orElseThrow();
    momentJMm = momentJMm.add(run.netHeatJ(), facts.of(run).armMm());
    runsIn.merge(run.line().joint(), 1, Integer::sum);
    return chosen;
  }

  /** Why the runs are in this order, in sentences. */
  List<String> reasons() {
    tellAlike();
    return List.copyOf(reasons);
  }

  /** Puts in a sentence of its own. */
  void tell(String sentence) {
    tellAlike();
    reasons.add(sentence);
  }

  private static String name(Step step) {
    return step.run().orElseThrow().name();
  }

  private Optional<Step> elsewhere(
      List<Scored> best, Bench bench, ToDoubleFunction<RunPlan> waitS) {
    RunPlan first = best.get(0).step().run().orElseThrow();
    double firstS = waitS.applyAsDouble(first);
    if (firstS <= BenchTimes.value("wait worth working elsewhere") || facts.written(first)) {
      return Optional.empty();
    }
    Optional<Step> found = Optional.empty();
    double leastS = firstS;
    for (Scored scored : best.subList(1, best.size())) {
      RunPlan run = scored.step().run().orElseThrow();
      double costS = handlingS(run, bench);
      if (costS < leastS) {
        costS += waitS.applyAsDouble(run);
      }
      if (costS < leastS) {
        leastS = costS;
        found = Optional.of(scored.step());
      }
      if (leastS == 0) {
        break;
      }
    }
    return found;
  }

  /** Moving and turning over there and back again, s. */
  private static double handlingS(RunPlan run, Bench bench) {
    double seconds = run.place().equals(bench.place()) ? 0 : 2 * BenchTimes.value("move");
    return seconds + (run.lay() == bench.lay() ? 0 : 2 * BenchTimes.value("turn over"));
  }

  private long[] marks(Step step, Bench bench) {
    RunPlan run = step.run().orElseThrow();
    RunFacts.Fact fact = facts.of(run);
    return new long[] {
      facts.written(run) ? 0 : 1,
      run.place().equals(bench.place()) ? 0 : 1,
      run.lay() == bench.lay() ? 0 : 1 + run.lay().ordinal(),
      fact.butt() ? 0 : 1,
      fact.ring(),
      runsIn.getOrDefault(run.line().joint(), 0),
      facts.size(momentJMm.add(run.netHeatJ(), fact.armMm()))
    };
  }

  private static int compare(long[] first, long[] second) {
    for (int i = 0; i < first.length; i++) {
      if (first[i] != second[i]) {
        return Long.compare(first[i], second[i]);
      }
    }
    return 0;
  }

  private static RunCriterion decided(Scored best, Scored second) {
    for (int i = 0; i < best.marks().length; i++) {
      if (best.marks()[i] != second.marks()[i]) {
        return RunCriterion.values()[i];
      }
    }
    return RunCriterion.NAME;
  }

  /** What decided somewhere between two runs. */
  Set<RunCriterion> criteria() {
    return criteria;
  }

  private void note(Step step, RunCriterion by) {
    criteria.add(by);
    if (by != alikeBy) {
      tellAlike();
      alikeBy = by;
    }
    alike.add(name(step));
  }

  private void tellAlike() {
    if (!alike.isEmpty()) {
      reasons.add(alikeBy.sentence(String.join(", ", alike)));
      alike.clear();
    }
  }
}
