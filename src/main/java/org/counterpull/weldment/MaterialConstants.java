package org.counterpull.weldment;

/**
 * Material properties as constants, for a published experiment or a check of the solver.
 *
 * @param conductivityWPerMK thermal conductivity
 * @param specificHeatJPerKgK specific heat
 * @param densityKgPerM3 density
 */
public record MaterialConstants(
    double conductivityWPerMK, double specificHeatJPerKgK, double densityKgPerM3) {}
