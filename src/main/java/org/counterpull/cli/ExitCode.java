package org.counterpull.cli;

/** What the program's exit code says. */
final class ExitCode {
  /** Done. */
  static final int DONE = 0;

  /** Done, and the answer is that something can't or mustn't be done. */
  static final int REFUSED = 1;

  /** Bad input or usage; nothing was written. */
  static final int BAD_INPUT = 2;

  /** A fault of the program. */
  static final int INTERNAL = 3;

  private ExitCode() {}
}
