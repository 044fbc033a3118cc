/**
 * Thermal properties of carbon steel, austenitic stainless steel and aluminium over temperature, by
 * EN 1993-1-2 and EN 1999-1-2.
 *
 * <p>Temperatures in C, specific heat in J/kgK, conductivity in W/mK, enthalpy in kJ/kg from 20 C.
 * These are fire-rate properties. Beyond the range of a standard the value at its end is kept.
 */
package org.counterpull.material;
