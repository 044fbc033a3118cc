package org.counterpull.heat.block;

/** The outer faces of a block. */
public enum Side {
  X_LOW,
  X_HIGH,
  Y_LOW,
  Y_HIGH,
  Z_LOW,
  Z_HIGH,
  /** Along the outline that was cut out of a Cartesian block. */
  OUTLINE,
  /** Bore of a tube. */
  INNER,
  /** Outside of a tube or round bar. */
  OUTER
}
