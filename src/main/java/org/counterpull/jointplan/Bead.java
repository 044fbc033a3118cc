package org.counterpull.jointplan;

/**
 * One bead before it has settings.
 *
 * @param number from 1, in the order of welding
 * @param layer from 1 at the root
 * @param kind what it is for
 * @param areaMm2 cross-section
 */
public record Bead(int number, int layer, PassPlan.Kind kind, double areaMm2) {}
