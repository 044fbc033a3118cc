package org.counterpull.pull;

/**
 * Stiffness of a connection in its own axes: along the run, across the joint, normal to both, and
 * about each. Zero leaves a component free, infinite locks it.
 *
 * @param along N/mm
 * @param across N/mm
 * @param normal N/mm
 * @param aboutAlong N mm/rad
 * @param aboutAcross N mm/rad
 * @param aboutNormal N mm/rad
 */
public record SpringStiffness(
    double along,
    double across,
    double normal,
    double aboutAlong,
    double aboutAcross,
    double aboutNormal) {

  /** Locks all six components. */
  public static final SpringStiffness RIGID =
      new SpringStiffness(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY);

  public SpringStiffness {
    double[] all = {along, across, normal, aboutAlong, aboutAcross, aboutNormal};
    for (double one : all) {
      if (!(one >= 0)) {
        throw new IllegalArgumentException("spring stiffness " + one + " must be zero or more");
      }
    }
  }

  /** The same stiffness in all six components. */
  public static SpringStiffness uniform(double stiffness) {
    return new SpringStiffness(stiffness, stiffness, stiffness, stiffness, stiffness, stiffness);
  }

  /** All components times a factor. */
  public SpringStiffness times(double factor) {
    return new SpringStiffness(
        factor * along,
        factor * across,
        factor * normal,
        factor * aboutAlong,
        factor * aboutAcross,
        factor * aboutNormal);
  }

  double[] components() {
    return new double[] {along, across, normal, aboutAlong, aboutAcross, aboutNormal};
  }
}
