package org.counterpull.mount;

import java.util.Locale;

/** The verdict on one way. */
public enum Outcome {
  FITS("fits"),
  FITS_IF("fits with these conditions"),
  DONT("don't");

  private final String words;

  Outcome(String words) {
    this.words = words;
  }

  /** The words used in outputs. */
  public String words() {
    return words;
  }

  /** The word used in JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The worse of both. */
  Outcome and(Outcome other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
