package org.counterpull.strength;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/** Products of place vectors. */
final class Tensors {
  private Tensors() {}

  /** {@code a b^T}. */
  static RealMatrix product(Vector3D a, Vector3D b) {
    return MatrixUtils.createRealVector(a.toArray())
        .outerProduct(MatrixUtils.createRealVector(b.toArray()));
  }

  /** {@code a^T M a}. */
  static double along(RealMatrix matrix, Vector3D a) {
    return a.dotProduct(new Vector3D(matrix.operate(a.toArray())));
  }
}
