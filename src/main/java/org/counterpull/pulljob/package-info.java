/**
 * Brings a weldment to the shape engine: parts as bars, plates and rigid pieces, runs as segments
 * with what each wants to shrink, fixtures as springs, checks as readings; and brings back how far
 * each check will be off, for this order and for others, which run does it, and how to set parts so
 * that they come out true.
 *
 * <p>Each effect counts once. Butt and corner: transverse shrinkage and angle are what the weld
 * wants. Tee, lap and flare: the wall that goes on under the weld shrinks and turns, the weld only
 * closes and leans. Along the run: the tendon force alone.
 *
 * <p>Left out: self-weight, contact, large deflection, warping, yielding beyond the published
 * limits, the pull of tacks.
 */
package org.counterpull.pulljob;
