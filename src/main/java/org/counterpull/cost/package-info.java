/**
 * What a job uses up and costs: filler, gas, energy, time, mass, money.
 *
 * <p>Each figure has its formula with a source; {@link org.counterpull.cost.Consumption} and {@link
 * org.counterpull.cost.Costing} apply them to the work in order.
 */
package org.counterpull.cost;
