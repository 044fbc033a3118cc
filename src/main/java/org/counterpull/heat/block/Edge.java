package org.counterpull.heat.block;

/**
 * A conduction path between two cells of one block that are not neighbours in its lattice.
 *
 * @param cellA one end
 * @param cellB the other end
 * @param shapeMm area over distance
 */
public record Edge(int cellA, int cellB, double shapeMm) {}
