/**
 * How much one weld shrinks and turns: published closed forms for shrinkage force, transverse
 * shrinkage, angle, camber, buckling, shells and general tolerances.
 *
 * <p>Inputs are plate and weld sizes in mm, net heat per length in J/mm (the arc's energy times the
 * physical efficiency of the process), moduli and stresses in N/mm2. Each class is one published
 * form and names its source and range; {@link org.counterpull.shrinkage.ErrorBand} says how far the
 * truth may lie from it. Nothing here knows what order the welds are made in: that is the business
 * of {@code org.counterpull.pull}.
 */
package org.counterpull.shrinkage;
