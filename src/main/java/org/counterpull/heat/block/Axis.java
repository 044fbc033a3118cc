package org.counterpull.heat.block;

import java.util.Arrays;

/** Cell edges along one direction, and the look-ups on them. */
final class Axis {
  final double[] edges;
  final int cells;

  Axis(String what, double[] edges) {
    this.edges = edges.clone();
    this.cells = edges.length - 1;
    if (cells < 1) {
      throw new IllegalArgumentException(what + " needs at least two cell edges");
    }
    for (int i = 0; i < cells; i++) {
      if (!(edges[i + 1] > edges[i])) {
        throw new IllegalArgumentException(
            what + " edges must increase: " + edges[i] + " then " + edges[i + 1]);
      }
    }
  }

  double size(int i) {
    return edges[i + 1] - edges[i];
  }

  double centre(int i) {
    return 0.5 * (edges[i] + edges[i + 1]);
  }

  double low() {
    return edges[0];
  }

  double high() {
    return edges[cells];
  }

  double at(int i, double fraction) {
    return edges[i] + fraction * size(i);
  }

  /** The cell that holds a place; the first or last cell beyond the ends. */
  int cellAt(double place) {
    int found = Arrays.binarySearch(edges, place);
    int i = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(cells - 1, i));
  }

  /** How far a place lies outside. */
  double beyond(double place) {
    return Math.max(0, Math.max(low() - place, place - high()));
  }

  /** The lower of the two cells whose centres enclose a place. */
  int below(double place) {
    int i = cellAt(place);
    int lower = place < centre(i) ? i - 1 : i;
    return Math.max(0, Math.min(Math.max(0, cells - 2), lower));
  }

  /** Weight of the upper of those two cells; held at the outer centres. */
  double part(int below, double place) {
    if (cells == 1) {
      return 0;
    }
    double span = centre(below + 1) - centre(below);
    return Math.max(0, Math.min(1, (place - centre(below)) / span));
  }
}
