package org.counterpull.pull;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One part as the assembly sees it: a few exposed nodes with three displacements and three turns
 * each, and how they give way when the first of them is held.
 *
 * <p>Which node is held makes no difference to anything but rigid motion, which the assembly adds.
 */
public interface ElasticBody {

  /** How many nodes are exposed, at least one. */
  int exposedCount();

  /** Where an exposed node is, mm. */
  Vector3D exposed(int node);

  /**
   * Displacements and turns of the exposed nodes from unit forces and moments on them, the first
   * node held: six rows and columns for each node in the order ux, uy, uz, turns about x, y, z;
   * symmetric.
   */
  double[][] flexibility();
}
