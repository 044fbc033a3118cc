package org.counterpull.cli;

/** Input that can't be worked with; its message is printed as it stands and the exit code is 2. */
final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * Bad input.
   *
   * @param message what is wrong, where, and what to write instead
   */
  BadInput(String message) {
    super(message, null, false, false);
  }
}
