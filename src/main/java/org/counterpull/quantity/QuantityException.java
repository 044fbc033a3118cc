package org.counterpull.quantity;

/** Says that a text is no quantity of the kind wanted, why, and what to write instead. */
public final class QuantityException extends IllegalArgumentException {
  private final String problem;
  private final String tryThis;

  /**
   * Both parts are shown to a person.
   *
   * @param problem what is wrong, with the text as it was written
   * @param tryThis what to write instead, with an example
   */
  public QuantityException(String problem, String tryThis) {
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
