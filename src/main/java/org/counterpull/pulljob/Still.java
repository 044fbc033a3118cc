package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.counterpull.plan.PullAnswer.Station;

/** Takes the rigid motion off a shape, so that only what bent is left. */
final class Still {
  private Still() {}

  /** The stations moved back rigidly as a whole, as near to where they were as it goes. */
  static List<Station> of(List<Station> stations) {
    Vector3D middle = Vector3D.ZERO;
    Vector3D shift = Vector3D.ZERO;
    for (Station station : stations) {
      middle = middle.add(1.0 / stations.size(), station.at());
      shift = shift.add(1.0 / stations.size(), station.shift());
    }
    Vector3D turn = turn(stations, middle);
    List<Station> still = new ArrayList<>();
    for (Station station : stations) {
      Vector3D rigid = shift.add(turn.crossProduct(station.at().subtract(middle)));
      still.add(
          new Station(
              station.at(), station.shift().subtract(rigid), station.turn().subtract(turn)));
    }
    return still;
  }

  private static Vector3D turn(List<Station> stations, Vector3D middle) {
    RealMatrix inertia = new Array2DRowRealMatrix(3, 3);
    Vector3D moment = Vector3D.ZERO;
    for (Station station : stations) {
      Vector3D arm = station.at().subtract(middle);
      moment = moment.add(arm.crossProduct(station.shift()));
      double[] a = arm.toArray();
      for (int i = 0; i < 3; i++) {
        inertia.addToEntry(i, i, arm.getNormSq());
        for (int j = 0; j < 3; j++) {
          inertia.addToEntry(i, j, -a[i] * a[j]);
        }
      }
    }
    RealVector turn =
        new SingularValueDecomposition(inertia)
            .getSolver()
            .solve(new ArrayRealVector(moment.toArray()));
    return new Vector3D(turn.toArray());
  }
}
