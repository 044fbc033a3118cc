package org.counterpull.weldment;

import java.util.Locale;

/** What a shop cuts weld edges with. */
public enum EdgeTool {
  /** Straight bevels on anything; slow on deep ones. */
  GRINDER,
  /** Straight bevels through the whole section of bars and flats. */
  SAW,
  /** Straight bevels on carbon steel; the scale is ground off. */
  TORCH,
  /** Any form, root radii included. */
  MILL;

  /** The word in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** It cuts the root radius of U and J forms. */
  public boolean cutsRadius() {
    return this == MILL;
  }
}
