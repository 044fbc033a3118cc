package org.counterpull.order;

/**
 * An operation with its place in time.
 *
 * @param number from 1, in the order of work
 * @param operation what is done
 * @param startS from the beginning of the job, s
 * @param endS likewise
 */
public record Timed(int number, Operation operation, double startS, double endS) {}
