package org.counterpull.contact;

/**
 * Welding positions of ISO 6947; for vertical lines the plan chooses between up (PF) and down (PG).
 */
public enum WeldPosition {
  PA("flat"),
  PB("horizontal fillet"),
  PC("horizontal"),
  PD("overhead fillet"),
  PE("overhead"),
  PF("vertical up"),
  PG("vertical down");

  private final String words;

  WeldPosition(String words) {
    this.words = words;
  }

  /** The position in plain words. */
  public String words() {
    return words;
  }
}
