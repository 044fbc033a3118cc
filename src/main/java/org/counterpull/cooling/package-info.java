/**
 * Temperatures around a weld in closed form: cooling time t8/5, moving and instantaneous sources,
 * peak temperatures, and the waits until a body is down to its interpass temperature.
 *
 * <p>Net heat goes in here, except in the EN formula for t8/5, which takes heat input with the
 * factor k. Results of sources are rises over the start temperature in K. These forms hold outside
 * the fused zone, for constant properties.
 */
package org.counterpull.cooling;
