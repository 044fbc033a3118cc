package org.counterpull.pull;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A piece so stocky that its own give is nothing beside that of what it is welded to: barrels,
 * tabs, lugs.
 *
 * @param at its one exposed node, mm
 */
public record RigidBody(Vector3D at) implements ElasticBody {

  @Override
  public int exposedCount() {
    return 1;
  }

  @Override
  public Vector3D exposed(int node) {
    return at;
  }

  @Override
  public double[][] flexibility() {
    return new double[6][6];
  }
}
