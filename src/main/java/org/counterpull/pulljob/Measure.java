package org.counterpull.pulljob;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.Coordinate;
import org.counterpull.weldment.Check;

/**
 * A check as readings of the shape engine.
 *
 * @param check what must come out true
 * @param toleranceMm how far it may be off
 * @param rule how its readings make one number
 * @param points what is read, point by point
 * @param untold why it can't be told; empty when it can
 */
record Measure(Check check, double toleranceMm, Rule rule, List<Point> points, String untold) {

  Measure {
    points = List.copyOf(points);
  }

  /**
   * A point that deviates.
   *
   * @param part that it is on
   * @param where in words: left end, middle
   * @param ways directions, unit vectors
   * @param readings how far it deviates in each of them
   */
  record Point(String part, String where, List<Vector3D> ways, List<Coordinate> readings) {
    Point {
      ways = List.copyOf(ways);
      readings = List.copyOf(readings);
    }
  }

  /** How readings make one number. */
  enum Rule {
    /** The one reading, with its sign. */
    SIGNED,
    /** The farthest of all points. */
    FARTHEST,
    /** From the lowest reading to the highest. */
    SPAN
  }

  int readings() {
    return points.stream().mapToInt(point -> point.readings().size()).sum();
  }

  /** The check's number; {@code values} hold its readings from {@code first} on. */
  double value(double[] values, int first) {
    double most = 0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    int at = first;
    for (Point point : points) {
      double square = 0;
      for (int k = 0; k < point.readings().size(); k++) {
        double value = values[at++];
        square += value * value;
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
      most = Math.max(most, square);
    }
    if (points.isEmpty()) {
      return 0;
    }
    return switch (rule) {
      case SIGNED -> values[first];
      case FARTHEST -> Math.sqrt(most);
      case SPAN -> high - low;
    };
  }

  /** How much each reading counts in the number, near the given readings. */
  double[] weights(double[] values, int first) {
    double[] weights = new double[readings()];
    if (points.isEmpty()) {
      return weights;
    }
    switch (rule) {
      case SIGNED -> weights[0] = 1;
      case FARTHEST -> farthest(values, first, weights);
      case SPAN -> {
        int low = 0;
        int high = 0;
        for (int k = 1; k < weights.length; k++) {
          low = values[first + k] < values[first + low] ? k : low;
          high = values[first + k] > values[first + high] ? k : high;
        }
        weights[high] += 1;
        weights[low] -= 1;
      }
    }
    return weights;
  }

  private void farthest(double[] values, int first, double[] weights) {
    int at = 0;
    double most = 0;
    for (Point point : points) {
      int count = point.readings().size();
      double square = 0;
      for (int k = 0; k < count; k++) {
        square += values[first + at + k] * values[first + at + k];
      }
      double size = Math.sqrt(square);
      if (size > most) {
        most = size;
        java.util.Arrays.fill(weights, 0);
        for (int k = 0; k < count; k++) {
          weights[at + k] = values[first + at + k] / size;
        }
      }
      at += count;
    }
  }
}
