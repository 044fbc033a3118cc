package org.counterpull.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.counterpull.weldment.Before;
import org.counterpull.weldment.Joint;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;

/** Reads the file's own rules of order, and finds rules that close a circle. */
final class BeforeReading {
  private final Map<String, List<String>> kinds;
  private final List<String> jointNames;
  private final List<Joint> joints;

  /**
   * Reads rules.
   *
   * @param kinds names by kind, such as part or joint
   */
  BeforeReading(Map<String, List<String>> kinds, List<Joint> joints) {
    this.kinds = kinds;
    this.jointNames = kinds.get("joint");
    this.joints = joints;
  }

  List<Before> read(Fields file) {
    Optional<Value> value = file.get("before");
    if (value.isEmpty()) {
      return List.of();
    }
    List<Before> rules = new ArrayList<>();
    Map<Before, Value> places = new LinkedHashMap<>();
    for (Value item : value.get().items()) {
      Optional<Before> rule = item.fields(JointKeys.BEFORE).flatMap(this::rule);
      rule.ifPresent(rules::add);
      rule.ifPresent(r -> places.putIfAbsent(r, item));
    }
    refuseCircles(rules, places);
    return rules;
  }

  private Optional<Before> rule(Fields fields) {
    Optional<String> first = fields.get("first").flatMap(this::name);
    Optional<String> then = fields.get("then").flatMap(this::name);
    Optional<String> because = fields.text("because");
    if (first.isPresent() && first.equals(then)) {
      return fields.problem(
          "then", first.get() + " can't come before itself", "two different things");
    }
    return first.flatMap(f -> then.map(t -> new Before(f, t, because)));
  }

  /** A name that means one thing. */
  private Optional<String> name(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return text;
    }
    List<String> matching =
        kinds.entrySet().stream()
            .filter(e -> e.getValue().contains(text.get()))
            .map(Map.Entry::getKey)
            .toList();
    if (matching.size() == 1) {
      return text;
    }
    if (matching.size() > 1) {
      return value.problem(
          Problems.quote(text.get()) + " is the name of a " + String.join(" and of a ", matching),
          "a run such as " + text.get() + "/top, or another name for one of them");
    }
    if (text.get().contains("/")) {
      return RunName.check(value, jointNames, joints);
    }
    List<String> all = kinds.values().stream().flatMap(List::stream).distinct().toList();
    return value.known(text.get(), all, "run, joint, part, feature or fixture");
  }

  private static void refuseCircles(List<Before> rules, Map<Before, Value> places) {
    Graph<String, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
    for (Before rule : rules) {
      graph.addVertex(rule.earlier());
      graph.addVertex(rule.later());
      graph.addEdge(rule.earlier(), rule.later());
    }
    for (var circle : new KosarajuStrongConnectivityInspector<>(graph).stronglyConnectedSets()) {
      if (circle.size() > 1) {
        List<Before> inside =
            rules.stream()
                .filter(r -> circle.contains(r.earlier()) && circle.contains(r.later()))
                .toList();
        Before last = inside.get(inside.size() - 1);
        places
            .get(last)
            .problem(
                "the rules close a circle: "
                    + String.join(
                        ", ",
                        inside.stream()
                            .map(r -> r.earlier() + " before " + r.later())
                            .distinct()
                            .toList()),
                "leave one of these rules out");
      }
    }
  }
}
