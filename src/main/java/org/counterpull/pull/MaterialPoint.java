package org.counterpull.pull;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A point of a part that moves rigidly with one of its exposed nodes: a weld line beside a bar's
 * centroid, the end of a pin.
 *
 * @param body number of the body in its assembly
 * @param node exposed node of that body
 * @param position where the point is, mm
 */
public record MaterialPoint(int body, int node, Vector3D position) {}
