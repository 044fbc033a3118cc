/**
 * Where the arc puts its power: a volume of stated size and distribution that moves along a path.
 * The energy of a step is shared over the cells that the volume meets, in whatever blocks they lie,
 * and adds up to power times time exactly.
 */
package org.counterpull.heat.source;
