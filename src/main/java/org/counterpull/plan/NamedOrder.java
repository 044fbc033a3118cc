package org.counterpull.plan;

/** Orders of welding that are compared. */
public enum NamedOrder {
  BEST("best", "the best found"),
  RULES("rules", "by the published rules"),
  WRITTEN("written", "as the file writes it"),
  ONE_SIDE_FIRST("one-side-first", "one side of every joint first"),
  LEFT_TO_RIGHT("left-to-right", "from left to right");

  private final String word;
  private final String words;

  NamedOrder(String word, String words) {
    this.word = word;
    this.words = words;
  }

  /** The word for it on the command line. */
  public String word() {
    return word;
  }

  /** What it is. */
  public String words() {
    return words;
  }
}
