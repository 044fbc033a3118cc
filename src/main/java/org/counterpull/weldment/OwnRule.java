package org.counterpull.weldment;

/**
 * A rule of order of the file's or the shop's own, about sorts of steps.
 *
 * @param name unique in the weldment
 * @param earlier the sort of step that comes first, in the words of the plan's rules
 * @param later the sort of step that comes after
 * @param match which steps of the two sorts it ties: all, same part, same joint, same subject
 * @param reason in the user's words, a sentence
 * @param hard false for a preference that gives way
 * @param source where it stands
 */
public record OwnRule(
    String name,
    String earlier,
    String later,
    String match,
    String reason,
    boolean hard,
    String source) {}
