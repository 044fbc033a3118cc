package org.counterpull.hinge;

import java.util.Comparator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Station;

/** Where the points of a part have gone when all is welded and the fixtures are off. */
final class Moved {
  private final PullAnswer shape;

  Moved(PullAnswer shape) {
    this.shape = shape;
  }

  /** How far a point of a part went: with the nearest place that was worked out, as one body. */
  Vector3D shift(String part, Vector3D point) {
    Station near =
        shape.released().stream()
            .filter(moved -> moved.part().equals(part))
            .flatMap(moved -> moved.stations().stream())
            .min(Comparator.comparingDouble(station -> station.at().distance(point)))
            .orElseThrow(() -> new IllegalArgumentException("no shape of " + part));
    return near.shift().add(near.turn().crossProduct(point.subtract(near.at())));
  }
}
