package org.counterpull.heat.superposed;

import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;

/**
 * A point at which temperatures are wanted: the start of a run, a feature.
 *
 * @param name as it is reported
 * @param block block of the full model that it lies in
 * @param point where, in world coordinates
 */
public record Target(String name, Block block, Vec3 point) {}
