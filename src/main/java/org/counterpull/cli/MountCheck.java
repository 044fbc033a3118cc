package org.counterpull.cli;

/** Where a plan compares ways of fastening something to a tube. */
enum MountCheck {
  /** Wherever closed forms say that a weld comes near something. */
  NEAR,
  /** Nowhere: such welds are only named. */
  NONE
}
