package org.counterpull.order;

/**
 * A rule that had a say in this plan.
 *
 * @param id stable identifier
 * @param when what on the job brought it up
 * @param relation what it does, such as {@code ream before fit}
 * @param reason why, a sentence
 * @param hardness must, should or goes with
 * @param times how often it applied
 * @param source where it stands, or {@code common practice, no source}
 */
public record AppliedRule(
    String id,
    String when,
    String relation,
    String reason,
    Hardness hardness,
    int times,
    String source) {

  /** How binding a rule is. */
  public enum Hardness {
    MUST("must"),
    SHOULD("should"),
    WITH("goes with"),
    CHOICE("decides among equals");

    private final String words;

    Hardness(String words) {
      this.words = words;
    }

    /** The words used on plans. */
    public String words() {
      return words;
    }
  }
}
