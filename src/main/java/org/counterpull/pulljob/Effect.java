package org.counterpull.pulljob;

/** The four ways in which a run pulls; what is said of one method is wrong for all runs alike. */
public enum Effect {
  ACROSS("shrinkage across", org.counterpull.calibration.Effect.ACROSS),
  ANGLE("angle", org.counterpull.calibration.Effect.ANGLE),
  LEAN("closing and lean", org.counterpull.calibration.Effect.ANGLE),
  ALONG("shrinkage along", org.counterpull.calibration.Effect.ALONG);

  private final String words;
  private final org.counterpull.calibration.Effect calibrated;

  Effect(String words, org.counterpull.calibration.Effect calibrated) {
    this.words = words;
    this.calibrated = calibrated;
  }

  /** As on a plan. */
  public String words() {
    return words;
  }

  /** The factor that a shop may have measured for it. */
  org.counterpull.calibration.Effect calibrated() {
    return calibrated;
  }
}
