/**
 * What a shop's own readings say about the published forms of shrinkage: factors on them, with the
 * spread that remains.
 *
 * <p>A form is off by the same factor for all runs of a shop and a process, and each run scatters
 * on top. Before anything is measured the factor is as wide as the published band ({@link
 * org.counterpull.shrinkage.ErrorBand}); each reading narrows it by a plain Bayesian update of
 * log-normal factors ({@link org.counterpull.calibration.FactorBand}).
 */
package org.counterpull.calibration;
