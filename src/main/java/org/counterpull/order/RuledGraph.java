package org.counterpull.order;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.counterpull.weldment.OwnRule;
import org.counterpull.weldment.Weldment;

/**
 * The graph with all rules in it.
 *
 * @param graph steps and rules
 * @param cycle hard rules that go in a circle; the graph is then of no use
 * @param departures where one rule gave way to another, in sentences
 */
record RuledGraph(OrderGraph graph, Optional<OrderCycle> cycle, List<String> departures) {

  static RuledGraph of(Weldment weldment, List<Step> steps) {
    Set<String> own =
        weldment.rules().stream().map(OwnRule::name).collect(Collectors.toCollection(TreeSet::new));
    OrderGraph graph = new OrderGraph(steps, own);
    Map<StepTag, List<Step>> byTag = new EnumMap<>(StepTag.class);
    steps.forEach(s -> byTag.computeIfAbsent(s.tag(), tag -> new ArrayList<>()).add(s));
    for (OrderRule rule : OrderRules.with(weldment)) {
      if (rule.hard() && !rule.exceptEarly()) {
        add(graph, rule, byTag, Set.of());
      }
    }
    FileRules.of(weldment, steps).forEach(graph::add);
    Optional<OrderCycle> cycle = graph.cycle();
    if (cycle.isPresent()) {
      return new RuledGraph(graph, cycle, List.of());
    }
    Set<String> early = early(graph, byTag.getOrDefault(StepTag.WELD, List.of()));
    for (OrderRule rule : OrderRules.with(weldment)) {
      if (rule.hard() && rule.exceptEarly()) {
        add(graph, rule, byTag, early);
      }
    }
    for (OrderRule rule : OrderRules.with(weldment)) {
      if (!rule.hard()) {
        add(graph, rule, byTag, Set.of());
      }
    }
    return new RuledGraph(graph, Optional.empty(), departures(graph, early));
  }

  private static void add(
      OrderGraph graph, OrderRule rule, Map<StepTag, List<Step>> byTag, Set<String> leftOut) {
    for (Step earlier : byTag.getOrDefault(rule.earlier(), List.of())) {
      for (Step later : byTag.getOrDefault(rule.later(), List.of())) {
        if (!leftOut.contains(later.id()) && rule.match().ties(earlier, later)) {
          graph.add(
              new Precedence(earlier.id(), later.id(), rule.id(), rule.reason(), rule.hard()));
        }
      }
    }
  }

  /** Runs that a hard rule wants in before some joint is tacked. */
  private static Set<String> early(OrderGraph graph, List<Step> runs) {
    Set<String> early = new TreeSet<>();
    for (Step run : runs) {
      if (graph.leadsTo(run.id(), StepTag.TACK)) {
        early.add(run.id());
      }
    }
    return early;
  }

  private static List<String> departures(OrderGraph graph, Set<String> early) {
    List<String> sentences = new ArrayList<>();
    for (String id : early) {
      sentences.add(
          graph.step(id).subject().orElse(id)
              + " is welded before all joints are tacked (against R18): "
              + String.join(" ", graph.reasons(id)));
    }
    for (Precedence rule : graph.givenUp()) {
      sentences.add(
          rule.earlier() + " before " + rule.later() + " gives way (" + rule.rule() + ").");
    }
    return sentences;
  }
}
