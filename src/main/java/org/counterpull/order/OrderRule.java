package org.counterpull.order;

/**
 * A rule of order, as data.
 *
 * @param id stable identifier
 * @param when condition in words, for people
 * @param earlier the sort of step that comes first
 * @param later the sort of step that comes after
 * @param match which steps of the two sorts it ties
 * @param reason why, a sentence
 * @param hard false for a preference that gives way when it can't be met
 * @param exceptEarly true when it leaves out runs that a hard rule wants in before another joint is
 *     tacked
 * @param told false for a reason that steps need not repeat
 * @param source where it stands, or {@code common practice, no source}
 * @param remedy what to change in the design when it can't be met, a sentence
 */
record OrderRule(
    String id,
    String when,
    StepTag earlier,
    StepTag later,
    Match match,
    String reason,
    boolean hard,
    boolean exceptEarly,
    boolean told,
    String source,
    String remedy) {}
