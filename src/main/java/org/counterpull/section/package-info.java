/**
 * Areas and masses of structural cross-sections: pure functions of dimensions in mm.
 *
 * <p>Corners are sharp unless a radius is given. Areas agree with section tables only when the
 * rolled or cold-formed radii are given too.
 */
package org.counterpull.section;
