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
  DOUBLE_U("double-u", false, true),
  J("j", false, true),
  DOUBLE_J("double-j", false, true);

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

  /** Its groove has a root radius (u, j and their double forms). */
  public boolean hasRadius() {
    return radius;
  }

  /** The groove opens to both faces. */
  public boolean isDouble() {
    return switch (this) {
      case DOUBLE_V, DOUBLE_BEVEL, DOUBLE_U, DOUBLE_J -> true;
      case SQUARE, V, BEVEL, U, J -> false;
    };
  }

  /** Edges that are cut: both, one, or none. */
  public int preparedEdges() {
    return switch (this) {
      case SQUARE -> 0;
      case BEVEL, DOUBLE_BEVEL, J, DOUBLE_J -> 1;
      case V, DOUBLE_V, U, DOUBLE_U -> 2;
    };
  }

  /** The preparation by its word. */
  public static Preparation of(String word) {
    for (Preparation preparation : values()) {
      if (preparation.word.equals(word.toLowerCase(Locale.ROOT))) {
        return preparation;
      }
    }
    throw new IllegalArgumentException(
        "no preparation '"
            + word
            + "': write square, v, double-v, bevel, double-bevel, u, double-u, j or double-j");
  }
}
