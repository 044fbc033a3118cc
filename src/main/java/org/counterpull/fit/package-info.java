/**
 * Fits and clearances: the limits of holes and shafts, how much a tube breathes under pressure, how
 * wide a gap a seal bridges.
 *
 * <p>Sources: ISO 286 and Lame's thick cylinder from memory; extrusion gaps as common practice.
 * Sizes up to 500 mm.
 */
package org.counterpull.fit;
