/**
 * How blocks touch each other: fitted faces, air gaps, weld metal from the moment that it is laid,
 * and faces that are one metal. Every link moves heat from one cell to another and back by the same
 * number, so nothing is gained or lost on the way, however the cells of both sides lie.
 */
package org.counterpull.heat.link;
