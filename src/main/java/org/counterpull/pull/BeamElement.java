package org.counterpull.pull;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * One straight piece of a bar.
 *
 * @param section its section
 * @param up rough direction of the section's z axis
 */
public record BeamElement(SectionStiffness section, Vector3D up) {}
