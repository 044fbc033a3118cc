package org.counterpull.heat.solve;

/**
 * How finely time is cut.
 *
 * @param travelShare step while an arc burns, as a share of the time in which the source passes its
 *     own length, or in which heat spreads over that length if that is shorter
 * @param toleranceK estimated error of one step while no arc burns
 * @param longestStepS longest step
 */
public record Fineness(double travelShare, double toleranceK, double longestStepS) {
  public static final Fineness COARSE = new Fineness(0.4, 0.4, 600);
  public static final Fineness NORMAL = new Fineness(0.25, 0.1, 300);
  public static final Fineness FINE = new Fineness(0.125, 0.02, 120);

  public Fineness {
    if (!(travelShare > 0 && toleranceK > 0 && longestStepS > 0)) {
      throw new IllegalArgumentException(
          "fineness must be above 0: " + travelShare + ", " + toleranceK + ", " + longestStepS);
    }
  }

  /** The same with steps half as long; for measuring the error that the steps make. */
  public Fineness halved() {
    // The error of a second-order step falls with the cube of its length.
    return new Fineness(travelShare / 2, toleranceK / 8, longestStepS / 2);
  }
}
