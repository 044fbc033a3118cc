/**
 * Formulas of a hydraulic cylinder that turns something about a hinge: pin distance, lever arm,
 * forces.
 */
package org.counterpull.linkage;
