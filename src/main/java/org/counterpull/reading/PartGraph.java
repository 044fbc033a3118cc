package org.counterpull.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.counterpull.reading.JointReading.Tie;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.Pseudograph;

/** Parts as vertices, joints as edges: finds what is joined to nothing, and separate pieces. */
final class PartGraph {
  private final List<String> parts;
  private final Graph<String, Tie> graph = new Pseudograph<>(Tie.class);

  PartGraph(List<String> parts, List<Tie> ties) {
    this.parts = parts;
    parts.forEach(graph::addVertex);
    for (Tie tie : ties) {
      graph.addEdge(tie.first(), tie.second(), tie);
    }
  }

  /** Parts in no joint, in file order. */
  List<String> alone() {
    return parts.stream().filter(p -> graph.degreeOf(p) == 0).toList();
  }

  /** Groups of joined parts, in file order; one group where everything hangs together. */
  List<List<String>> groups() {
    List<List<String>> groups = new ArrayList<>();
    for (Set<String> group : new ConnectivityInspector<>(graph).connectedSets()) {
      if (group.size() > 1) {
        groups.add(parts.stream().filter(group::contains).toList());
      }
    }
    groups.sort(Comparator.comparingInt(g -> parts.indexOf(g.get(0))));
    return groups;
  }
}
