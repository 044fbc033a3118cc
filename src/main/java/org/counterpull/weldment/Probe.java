package org.counterpull.weldment;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A point whose temperature is wanted.
 *
 * @param name unique in the weldment
 * @param part the part that it is on
 * @param at in part axes (x from the left end, y and z from the middle of the box around the
 *     section), mm
 */
public record Probe(String name, String part, Vector3D at) {}
