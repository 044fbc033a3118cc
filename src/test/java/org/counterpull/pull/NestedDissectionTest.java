package org.counterpull.pull;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** The numbering of mesh nodes: complete, and sparser than row by row. */
class NestedDissectionTest {

  @Test
  void everyNodeOnceAndAThirdOfTheFill() {
    int side = 80;
    List<Vector3D> nodes = new ArrayList<>();
    List<Set<Integer>> neighbours = new ArrayList<>();
    for (int j = 0; j < side; j++) {
      for (int i = 0; i < side; i++) {
        nodes.add(new Vector3D(i, j, 0));
        neighbours.add(new TreeSet<>());
      }
    }
    for (int n = 0; n < nodes.size(); n++) {
      if (n % side > 0) {
        connect(neighbours, n, n - 1);
      }
      if (n >= side) {
        connect(neighbours, n, n - side);
      }
    }
    List<Integer> order = NestedDissection.order(nodes, neighbours);
    assertThat(new TreeSet<>(order)).hasSize(nodes.size());
    List<Integer> natural = new ArrayList<>();
    for (int n = 0; n < nodes.size(); n++) {
      natural.add(n);
    }
    assertThat(order).hasSize(nodes.size());
    assertThat(fill(order, neighbours)).isLessThan(fill(natural, neighbours) / 3);
  }

  private static void connect(List<Set<Integer>> neighbours, int a, int b) {
    neighbours.get(a).add(b);
    neighbours.get(b).add(a);
  }

  /** Entries of the Cholesky factor, by eliminating node after node. */
  private static long fill(List<Integer> order, List<Set<Integer>> neighbours) {
    List<Set<Integer>> left = new ArrayList<>();
    neighbours.forEach(set -> left.add(new TreeSet<>(set)));
    long entries = 0;
    for (int node : order) {
      Set<Integer> touched = left.get(node);
      entries += touched.size() + 1;
      for (int a : touched) {
        left.get(a).addAll(touched);
        left.get(a).remove(a);
        left.get(a).remove(node);
      }
    }
    return entries;
  }
}
