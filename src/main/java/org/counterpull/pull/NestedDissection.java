package org.counterpull.pull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A numbering of mesh nodes that keeps the factor sparse: the mesh is halved across its longest
 * extent, the nodes of one half that touch the other come last, and so on in each half.
 *
 * <p>Source: A. George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal.
 * 10, 1973 (from memory), on node coordinates.
 */
final class NestedDissection {
  private static final int SMALL = 8;

  private final List<Vector3D> nodes;
  private final List<Set<Integer>> neighbours;
  private final List<Integer> order = new ArrayList<>();

  private NestedDissection(List<Vector3D> nodes, List<Set<Integer>> neighbours) {
    this.nodes = nodes;
    this.neighbours = neighbours;
  }

  /** Node numbers in the order in which their unknowns should be eliminated. */
  static List<Integer> order(List<Vector3D> nodes, List<Set<Integer>> neighbours) {
    NestedDissection dissection = new NestedDissection(nodes, neighbours);
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < nodes.size(); i++) {
      all.add(i);
    }
    dissection.dissect(all);
    return dissection.order;
  }

  private void dissect(List<Integer> part) {
    if (part.size() <= SMALL) {
      order.addAll(part);
      return;
    }
    Vector3D axis = longestExtent(part);
    List<Integer> sorted = new ArrayList<>(part);
    sorted.sort(
        Comparator.comparingDouble((Integer n) -> nodes.get(n).dotProduct(axis))
            .thenComparing(Comparator.naturalOrder()));
    Set<Integer> upper = new TreeSet<>(sorted.subList(sorted.size() / 2, sorted.size()));
    List<Integer> separator = new ArrayList<>();
    List<Integer> lower = new ArrayList<>();
    for (int n : sorted.subList(0, sorted.size() / 2)) {
      boolean touches = neighbours.get(n).stream().anyMatch(upper::contains);
      (touches ? separator : lower).add(n);
    }
    dissect(lower);
    dissect(new ArrayList<>(upper));
    order.addAll(separator);
  }

  private Vector3D longestExtent(List<Integer> part) {
    Vector3D longest = Vector3D.PLUS_I;
    double most = -1;
    for (Vector3D axis : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K)) {
      double low = part.stream().mapToDouble(n -> nodes.get(n).dotProduct(axis)).min().orElse(0);
      double high = part.stream().mapToDouble(n -> nodes.get(n).dotProduct(axis)).max().orElse(0);
      if (high - low > most) {
        most = high - low;
        longest = axis;
      }
    }
    return longest;
  }
}
