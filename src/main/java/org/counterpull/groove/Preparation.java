package org.counterpull.groove;

import java.util.Locale;

/** Edge preparations whose cross-section this package knows. */
public enum Preparation {
  SQUARE("square", false, false),
  V("v", true, false),
  DOUBLE_V("double-v", true, false),
  BEVEL("bevel", false, false),
  DOUBLE_BEVEL("double-bevel", false, false),
  U("u", false, true),
  J("j", false, true);

  private final String word;
  private final boolean includedAngle;
  private final boolean radius;

  Preparation(String word, boolean includedAngle, boolean radius) {
    this.word = word;
    this.includedAngle = includedAngle;
    this.radius = radius;
  }

  /** The preparation as written in files and on plans. */
  public String word() {
    return word;
  }

  /** Its angle is the included one (v, double-v); otherwise that of one edge. */
  public boolean angleIsIncluded() {
    return includedAngle;
  }

  /** Its groove has a root radius (u, j). */
  public boolean hasRadius() {
    return radius;
  }

  /** The groove opens to both faces. */
  public boolean isDouble() {
    return this == DOUBLE_V || this == DOUBLE_BEVEL;
  }

  /** The preparation by its word. */
  public static Preparation of(String word) {
    for (Preparation preparation : values()) {
      if (preparation.word.equals(word.toLowerCase(Locale.ROOT))) {
        return preparation;
      }
    }
    throw new IllegalArgumentException(
        "no preparation '" + word + "': write square, v, double-v, bevel, double-bevel, u or j");
  }
}
