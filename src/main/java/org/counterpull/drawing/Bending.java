package org.counterpull.drawing;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.plan.PullAnswer.Station;

/** Carries any point of a part along with the places of it whose movement is known. */
final class Bending {
  /** How far a place reaches, in units of the distance to its neighbour. */
  private static final double REACH = 0.7;

  private static final double LEAST_REACH_MM = 1;

  private final List<Station> stations;
  private final double reachMm;

  Bending(List<Station> stations) {
    this.stations = stations;
    double sum = 0;
    for (Station one : stations) {
      double nearest = Double.MAX_VALUE;
      for (Station other : stations) {
        double distance = one.at().distance(other.at());
        nearest = distance > 0 ? Math.min(nearest, distance) : nearest;
      }
      sum += nearest < Double.MAX_VALUE ? nearest : 0;
    }
    reachMm = Math.max(LEAST_REACH_MM, REACH * sum / Math.max(1, stations.size()));
  }

  /** How far a point of the part goes: every place counts, the near ones most, without a step. */
  Vector3D shift(Vector3D point) {
    double nearest = stations.stream().mapToDouble(s -> s.at().distanceSq(point)).min().orElse(0);
    Vector3D sum = Vector3D.ZERO;
    double weights = 0;
    for (Station station : stations) {
      double beyond = station.at().distanceSq(point) - nearest;
      double weight = Math.exp(-beyond / (2 * reachMm * reachMm));
      Vector3D arm = point.subtract(station.at());
      sum = sum.add(weight, station.shift().add(station.turn().crossProduct(arm)));
      weights += weight;
    }
    return weights > 0 ? sum.scalarMultiply(1 / weights) : sum;
  }
}
