package org.counterpull.contact;

import java.util.Locale;

/** How two parts meet, in the terms of ISO 17659. */
public enum JointForm {
  BUTT,
  TEE,
  CORNER,
  LAP,
  EDGE;

  /** The word used on plans. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
