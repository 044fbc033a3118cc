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

  /**
   * Puts neighbouring cells together.
   *
   * @param from first cell that may be put together with others
   * @param widest of what is put together
   * @return by cell, the number of the wider cell that holds it
   */
  int[] groups(int from, double widest) {
    int[] groups = new int[cells];
    int group = 0;
    double start = edges[0];
    for (int i = 1; i < cells; i++) {
      if (i <= from || edges[i + 1] - start > widest * (1 + 1e-9)) {
        group++;
        start = edges[i];
      }
      groups[i] = group;
    }
    return groups;
  }

  /** The edges of the wider cells. */
  double[] edges(int[] groups) {
    double[] wider = new double[groups[cells - 1] + 2];
    for (int i = 0; i < cells; i++) {
      wider[groups[i] + 1] = edges[i + 1];
    }
    wider[0] = edges[0];
    return wider;
  }

  double[] middles() {
    double[] middles = new double[cells];
    for (int i = 0; i < cells; i++) {
      middles[i] = centre(i);
    }
    return middles;
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

  /**
   * Weight of the upper of those two cells. Beyond the outer centres the value follows a parabola
   * that is level at the face, as it is where little heat leaves there; outside it is held.
   */
  double part(int below, double place) {
    if (cells == 1) {
      return 0;
    }
    double lower = centre(below);
    double upper = centre(below + 1);
    if (place < lower) {
      return -level(Math.max(0, place - low()), lower - low(), upper - low());
    }
    if (place > upper) {
      return 1 + level(Math.max(0, high() - place), high() - upper, high() - lower);
    }
    return (place - lower) / (upper - lower);
  }

  private static double level(double at, double near, double far) {
    return (near * near - at * at) / (far * far - near * near);
  }
}
