/**
 * A piece that turns about a hinge axis: first clash, grease access, and what its cylinder does
 * over the range. Angles are right-handed about the x of the part that carries the axis; 0 is as
 * drawn.
 *
 * <p>Limits: parts are solids without their holes and welds; pins, hoses and the eyes of a cylinder
 * are not drawn, its barrel is taken as 1.2 times its bore.
 */
package org.counterpull.swing;
