/**
 * Cross-sections of butt and groove preparations, their face widths, caps and roots, the volumes of
 * plugs, slots and bevelled bars, and the mass of the weld metal that fills them.
 *
 * <p>Plain geometry, derived. Limits: straight edges and sharp corners; real beads carry 5 to 10 %
 * more metal than the drawn section.
 */
package org.counterpull.groove;
