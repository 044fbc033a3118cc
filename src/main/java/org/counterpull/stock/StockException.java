package org.counterpull.stock;

/** Says why a text or a set of dimensions is no piece of stock, and what to write instead. */
public final class StockException extends IllegalArgumentException {
  private final String problem;
  private final String tryThis;

  /**
   * Both parts are shown to a person.
   *
   * @param problem what is wrong
   * @param tryThis what to write instead, with an example
   */
  public StockException(String problem, String tryThis) {
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
