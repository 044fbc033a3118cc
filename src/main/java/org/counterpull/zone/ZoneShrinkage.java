package org.counterpull.zone;

import org.counterpull.quantity.Computed;

/**
 * What the zone rule gives for one run on one wall.
 *
 * @param across free transverse shrinkage of the wall, mm
 * @param angle free angle of the wall, rad; positive lifts its wings towards the weld
 * @param tendon shrinkage force along the run, N
 * @param tendonNMm where the tendon force acts across the run, from the weld line, mm
 * @param tendonBMm where it acts out of the metal, mm
 */
public record ZoneShrinkage(
    Computed across, Computed angle, Computed tendon, double tendonNMm, double tendonBMm) {}
