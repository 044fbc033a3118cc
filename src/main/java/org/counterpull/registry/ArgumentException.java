package org.counterpull.registry;

/** Says which argument of a published formula is wrong, why, and what to write instead. */
public final class ArgumentException extends IllegalArgumentException {
  private final String problem;
  private final String tryThis;

  /**
   * Both parts are shown to a person.
   *
   * @param problem what is wrong
   * @param tryThis what to write instead
   */
  public ArgumentException(String problem, String tryThis) {
    super(problem + ". Try: " + tryThis);
    this.problem = problem;
    this.tryThis = tryThis;
  }

  /** What is wrong. */
  public String problem() {
    return problem;
  }

  /** What to write instead. */
  public String tryThis() {
    return tryThis;
  }
}
