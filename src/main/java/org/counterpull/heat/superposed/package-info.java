/**
 * Temperatures for any order of the runs as a sum: from a linear copy of the model, the rise that
 * each run alone causes at each point of interest, once; then any order costs an addition per run.
 * Approximate, for searching; the chosen order is verified with the full model.
 */
package org.counterpull.heat.superposed;
