/**
 * Directly, or how else: what a weld near a bore, a seal, a bearing, a thread or a coating does to
 * it, and what the ways around it would do.
 *
 * <p>A piece of tube long enough, the lug on it, a sleeve under it where there is one, are laid out
 * for the heat engine with at least four cells through the wall; the bore's movement comes from the
 * shell of the shape engine under the shrinkage of the welds, under welds round the tube from the
 * ring on a cylindrical shell.
 *
 * <p>Limits: round tubes of steel. Movement has the wide bands of uncalibrated shrinkage; no
 * measured bore change under a lug is published. Limits of temperature near seals are common
 * practice.
 */
package org.counterpull.mount;
