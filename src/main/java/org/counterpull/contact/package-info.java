/**
 * Where parts touch: contact areas, the lines that can be welded, their positions, and whether a
 * torch reaches them.
 *
 * <p>Computed from the parts' solids alone. Lengths in mm, areas in mm2, directions as unit vectors
 * in weldment axes.
 */
package org.counterpull.contact;
