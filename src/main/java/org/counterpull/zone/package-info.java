/**
 * Shrinkage of a run read off the highest temperatures that the metal around it reached.
 *
 * <p>Where the closed forms of {@code shrinkage} don't hold (short runs, edges, bars, tubes) the
 * published zone rule is applied to a field of peak temperatures: {@link
 * org.counterpull.zone.ZoneRule} takes plain cells, whoever worked them out, in the run's axes: t
 * along it, n across it, b out of the metal on the side of the weld, in mm from the weld line.
 * {@link org.counterpull.zone.LinePeaks} gives such cells from line sources with mirror images at
 * faces, edges and ends, or around a tube. Nothing here knows of files, parts or orders.
 */
package org.counterpull.zone;
