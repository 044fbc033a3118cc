/**
 * Steels and their relatives by composition: carbon equivalents, hardness beside the weld, and the
 * grades that a shop meets.
 *
 * <p>Percentages are by mass; an element that isn't given counts as zero. Compositions of grades
 * are assumptions until a certificate says otherwise.
 */
package org.counterpull.steel;
