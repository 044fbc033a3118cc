/**
 * Finds the order and the directions of runs that bring the checks closest to true.
 *
 * <p>It knows nothing of welds: an {@link org.counterpull.pull.search.OrderEvaluator} says what an
 * order costs and shares the work between orders that begin alike. Small cases are searched to the
 * end and called proved; larger ones by a seeded local search that counts its evaluations.
 */
package org.counterpull.pull.search;
