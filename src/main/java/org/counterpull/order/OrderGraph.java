package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.Graphs;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DirectedAcyclicGraph;
import org.jgrapht.traverse.BreadthFirstIterator;

/** Steps and what must come before what. Hard rules that go in a circle are kept apart. */
final class OrderGraph {
  /** An arrow of the graph; several rules may stand behind one. */
  private static final class Arrow {
    private final Precedence precedence;

    private Arrow(Precedence precedence) {
      this.precedence = precedence;
    }
  }

  private final DirectedAcyclicGraph<String, Arrow> graph = new DirectedAcyclicGraph<>(Arrow.class);
  private final Map<String, Step> steps = new LinkedHashMap<>();
  private final List<Precedence> precedence = new ArrayList<>();
  private final List<Precedence> impossible = new ArrayList<>();
  private final List<Precedence> givenUp = new ArrayList<>();

  private final Set<String> own;

  /**
   * A graph of steps without rules.
   *
   * @param all the steps
   * @param own names of the file's own rules
   */
  OrderGraph(List<Step> all, Set<String> own) {
    this.own = Set.copyOf(own);
    for (Step step : all) {
      if (steps.put(step.id(), step) != null) {
        throw new IllegalStateException("two steps are called " + step.id());
      }
      graph.addVertex(step.id());
    }
  }

  /** Adds a rule between two steps; what can't be met is kept apart. */
  void add(Precedence rule) {
    if (rule.earlier().equals(rule.later())) {
      return;
    }
    try {
      graph.addEdge(rule.earlier(), rule.later(), new Arrow(rule));
      precedence.add(rule);
    } catch (IllegalArgumentException goesRound) {
      (rule.hard() ? impossible : givenUp).add(rule);
    }
  }

  Step step(String id) {
    return steps.get(id);
  }

  List<Step> steps() {
    return List.copyOf(steps.values());
  }

  /** Rules that hold, in the order in which they were added. */
  List<Precedence> precedence() {
    return List.copyOf(precedence);
  }

  /** Preferences that gave way to hard rules. */
  List<Precedence> givenUp() {
    return List.copyOf(givenUp);
  }

  /** The shortest circle of hard rules, as it must be told. */
  Optional<OrderCycle> cycle() {
    return impossible.stream()
        .map(this::circle)
        .min(Comparator.comparingInt(List::size))
        .map(members -> new OrderCycle(members, remedies(members)));
  }

  private List<Precedence> circle(Precedence closing) {
    GraphPath<String, Arrow> back =
        BFSShortestPath.findPathBetween(graph, closing.later(), closing.earlier());
    List<Precedence> members = new ArrayList<>(List.of(closing));
    back.getEdgeList().forEach(arrow -> members.add(arrow.precedence));
    return List.copyOf(members);
  }

  private List<String> remedies(List<Precedence> members) {
    List<String> remedies = new ArrayList<>();
    for (OrderRule rule : OrderRules.all()) {
      boolean takesPart = members.stream().anyMatch(p -> p.rule().equals(rule.id()));
      if (takesPart && !rule.remedy().isEmpty()) {
        remedies.add(rule.remedy());
      }
    }
    members.stream()
        .filter(p -> p.rule().equals(FileRules.BEFORE))
        .map(
            p ->
                "Leave out the file's rule \""
                    + OrderCycle.words(p.earlier())
                    + " before "
                    + OrderCycle.words(p.later())
                    + "\".")
        .forEach(remedies::add);
    members.stream()
        .filter(p -> own.contains(p.rule()))
        .map(p -> "Leave out the file's rule \"" + p.rule() + "\".")
        .distinct()
        .forEach(remedies::add);
    if (members.stream().anyMatch(p -> p.rule().equals(FileRules.WRITTEN))) {
      remedies.add("Change the written order.");
    }
    if (remedies.isEmpty()) {
      remedies.add("Make one of the parts removable, or bolt it on instead of welding it.");
    }
    return List.copyOf(remedies);
  }

  /** True when a step of that sort must come after the given one. */
  boolean leadsTo(String id, StepTag tag) {
    var onwards = new BreadthFirstIterator<>(graph, id);
    while (onwards.hasNext()) {
      if (steps.get(onwards.next()).tag() == tag) {
        return true;
      }
    }
    return false;
  }

  List<String> before(String id) {
    return Graphs.predecessorListOf(view(), id);
  }

  List<String> after(String id) {
    return Graphs.successorListOf(view(), id);
  }

  private Graph<String, Arrow> view() {
    return graph;
  }

  /** Reasons why a step comes before others, each once. */
  List<String> reasons(String id) {
    return graph.outgoingEdgesOf(id).stream()
        .map(arrow -> arrow.precedence)
        .filter(rule -> OrderRules.told(rule.rule()))
        .map(Precedence::reason)
        .distinct()
        .toList();
  }
}
