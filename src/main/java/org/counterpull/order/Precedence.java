package org.counterpull.order;

/**
 * Why one operation comes before another.
 *
 * @param earlier id of the operation that comes first
 * @param later id of the operation that comes after
 * @param rule id of the rule
 * @param reason in words
 * @param hard false for a preference that may be broken
 */
public record Precedence(String earlier, String later, String rule, String reason, boolean hard) {}
