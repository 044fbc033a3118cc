package org.counterpull.weldment;

import java.util.Locale;

/**
 * The side of a joint on which a line is welded.
 *
 * <p>Named in the axes of the joint's second part, the one that the first part is fitted onto, so
 * that turning the whole weldment renames nothing. Closed lines around a round part are inside or
 * outside.
 */
public enum Side {
  TOP,
  BOTTOM,
  FRONT,
  BACK,
  LEFT,
  RIGHT,
  INSIDE,
  OUTSIDE;

  /** The word used in files, run names and on plans. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
