package org.counterpull.heat.superposed;

/**
 * A run, or a segment of one, at its place in an order.
 *
 * @param run its index in the list from which the responses were made
 * @param startS when it is struck
 */
public record Struck(int run, double startS) {}
