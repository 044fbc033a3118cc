/**
 * The shapes that heat flows in: structured blocks of cells placed in space, graded Cartesian for
 * bars and plates (with an outline cut out of them if need be), exact cylindrical for round tubes
 * and bars. A block knows its cells' volumes, the conductance shape factors between them, and its
 * surface as a list of patches; it knows nothing of temperatures.
 */
package org.counterpull.heat.block;
