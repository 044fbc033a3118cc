package org.counterpull.machine;

/** What a machine can do with a joint, from best to worst. */
public enum Verdict {
  ONE_PASS("one-pass"),
  WITH_PREPARATION("with-preparation"),
  TEST_FIRST("test-first"),
  TACK_ONLY("tack-only"),
  NO("no");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** The verdict as printed. */
  public String word() {
    return word;
  }
}
