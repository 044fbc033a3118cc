package org.counterpull.heat.solve;

/**
 * How finely time is cut.
 *
 * @param travelShare step while an arc burns, as a share of the time in which the source passes its
 *     own length, or in which heat spreads over that length if that is shorter
 * @param toleranceK estimated error of one step in cold metal while no arc burns
 * @param longestStepS longest step
 * @param quietK change over eight short steps up to which a block away from the arc may wait and
 *     take one long step instead; 0 for never
 */
public record Fineness(double travelShare, double toleranceK, double longestStepS, double quietK) {
  public static final Fineness COARSE = new Fineness(0.4, 0.8, 600, 4);
  public static final Fineness NORMAL = new Fineness(0.25, 0.2, 300, 2);
  public static final Fineness FINE = new Fineness(0.125, 0.03, 120, 0.5);

  public Fineness {
    if (!(travelShare > 0 && toleranceK > 0 && longestStepS > 0 && quietK >= 0)) {
      throw new IllegalArgumentException(
          "fineness must be above 0: " + travelShare + ", " + toleranceK + ", " + longestStepS);
    }
  }

  /** Without blocks that wait. */
  public Fineness(double travelShare, double toleranceK, double longestStepS) {
    this(travelShare, toleranceK, longestStepS, 0);
  }

  /** The same with all blocks stepped alike. */
  public Fineness withoutWaiting() {
    return new Fineness(travelShare, toleranceK, longestStepS);
  }

  /** The same with steps half as long; for measuring the error that the steps make. */
  public Fineness halved() {
    // The error of a second-order step falls with the cube of its length.
    return new Fineness(travelShare / 2, toleranceK / 8, longestStepS / 2, quietK / 4);
  }
}
