/**
 * How filler gets into the joint: wire feed for a current, what part of it is deposited, the area
 * of a bead, the transfer mode of a wire arc, and how far an electrode reaches.
 *
 * <p>Sources: the burn-off relation of the wire welding literature, wire makers' and handbook
 * tables as common practice. Limits: plain carbon steel, electrode positive, unless a class says
 * otherwise; wire feed within 12 %.
 */
package org.counterpull.feeding;
