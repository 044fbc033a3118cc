/**
 * Bores that one pin turns in: whether it turns by hand once everything is welded, what is done to
 * the bores, and what pin and lugs carry. Reads the shape and the temperatures that others worked
 * out.
 */
package org.counterpull.hinge;
