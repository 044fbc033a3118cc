package org.counterpull.pulljob;

import org.counterpull.shrinkage.ErrorBand;

/** The four ways in which a run pulls; what is said of one method is wrong for all runs alike. */
public enum Effect {
  ACROSS("shrinkage across", "fillet transverse shrinkage"),
  ANGLE("angle", "angle of a fillet or bead"),
  LEAN("closing and lean", "angle of a fillet or bead"),
  ALONG("shrinkage along", "tendon force");

  private final String words;
  private final String band;

  Effect(String words, String band) {
    this.words = words;
    this.band = band;
  }

  /** As on a plan. */
  public String words() {
    return words;
  }

  /** How far the method may be off. */
  public ErrorBand band() {
    return ErrorBand.of(band);
  }
}
