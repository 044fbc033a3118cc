/**
 * The heat engine: the temperature anywhere in a weldment at any time, for any order of its runs.
 *
 * <p>Transient conduction by finite volumes on structured blocks. {@link
 * org.counterpull.heat.block} shapes the blocks, {@link org.counterpull.heat.material} says how
 * metal stores and conducts heat, {@link org.counterpull.heat.face} what its surfaces lose, {@link
 * org.counterpull.heat.link} how blocks touch, {@link org.counterpull.heat.source} where the arc
 * puts its power, and {@link org.counterpull.heat.solve} carries it all through time. {@link
 * org.counterpull.heat.superposed} answers the same question approximately for many orders at once.
 *
 * <p>Nothing here knows about weldments, joints or plans. Lengths are in mm, times in s, power in
 * W, temperatures in degrees Celsius; coefficients of heat transfer and material properties come in
 * in the units in which they are published (W/m2K, W/mK, J/kgK, kg/m3).
 */
package org.counterpull.heat;
