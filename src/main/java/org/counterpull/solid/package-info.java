/**
 * The solids of parts: what space they fill, their faces, boxes and distances.
 *
 * <p>A solid is a section swept along a straight line between two plane ends. Corners are sharp:
 * root fillets, toe radii and the rounded corners of tubes are left out. Holes and bores are
 * features, not geometry. Lengths in mm; points in the axes that the solid was asked for.
 */
package org.counterpull.solid;
