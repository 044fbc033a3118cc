/**
 * Static drawings of a plan as SVG: the weld map, the sections of joints with their beads, the
 * chart of time. Black on white, with a title and a description for those who can't see them.
 */
package org.counterpull.drawing;
