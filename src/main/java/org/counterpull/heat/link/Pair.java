package org.counterpull.heat.link;

import org.counterpull.heat.block.Patch;

/**
 * Two patches that exchange heat.
 *
 * @param a patch of the first block
 * @param b patch of the second block
 * @param areaMm2 area that they share
 * @param distanceMm between the two surfaces
 */
public record Pair(Patch a, Patch b, double areaMm2, double distanceMm) {}
