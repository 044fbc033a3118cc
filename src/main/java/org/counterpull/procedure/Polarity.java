package org.counterpull.procedure;

/** Kind of current and pole of the electrode. */
public enum Polarity {
  ELECTRODE_POSITIVE("DC+"),
  ELECTRODE_NEGATIVE("DC-"),
  ALTERNATING("AC");

  private final String word;

  Polarity(String word) {
    this.word = word;
  }

  /** The polarity as written in files. */
  public String word() {
    return word;
  }
}
