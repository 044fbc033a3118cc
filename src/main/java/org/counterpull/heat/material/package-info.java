/**
 * How metal stores and conducts heat: tables of temperature and of the conductivity integral over
 * the enthalpy, exact through specific-heat peaks and latent heat.
 *
 * <p>Carbon steel by EN 1993-1-2, stainless steel by its Annex C, aluminium by EN 1999-1-2; what
 * happens above those standards' ranges, up to and through melting, is stated in {@code
 * melting.csv} with a source for each value.
 */
package org.counterpull.heat.material;
