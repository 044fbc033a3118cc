/**
 * Carries the temperatures of a model through time.
 *
 * <p>{@link org.counterpull.heat.solve.HeatModel} gathers blocks, faces and links; {@link
 * org.counterpull.heat.solve.Simulation} starts it at a temperature, strikes arcs, lays weld metal,
 * and goes on to a time or until something holds. State is the enthalpy of each cell, so that
 * nothing is lost in a specific-heat peak or in melting, and every step is a sum of fluxes that
 * leave one cell and enter another, so that the energy balance closes to rounding.
 */
package org.counterpull.heat.solve;
