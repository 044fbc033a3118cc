package org.counterpull.pull.search;

/**
 * One run in an order.
 *
 * @param run number of the run
 * @param reversed welded from its end to its start
 */
public record Step(int run, boolean reversed) {}
