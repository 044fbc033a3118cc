package org.counterpull.mount;

import java.util.Locale;

/** What is in the tube while it is welded. */
public enum Inside {
  DRAINED,
  OIL;

  /** The word used in options. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
