package org.counterpull.weldment;

import java.util.Optional;

/**
 * Where the weldment is welded.
 *
 * @param ambientC temperature of air and cold parts
 * @param filmWPerM2K film coefficient for all faces, when the file gives one (radiation is then
 *     left out)
 * @param outdoors true when wind can reach the arc
 * @param canBeTurned true when the weldment can be turned over while it is welded
 */
public record Surroundings(
    double ambientC, Optional<Double> filmWPerM2K, boolean outdoors, boolean canBeTurned) {}
