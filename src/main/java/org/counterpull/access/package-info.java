/**
 * Which tool still gets to a place when which parts are there: drill, grease gun, hand, and the pin
 * that goes in from the end.
 *
 * <p>A tool is a row of cylinders along the axis of the place; balls along it are held against the
 * solids of the parts. Limits: tools come straight along the axis, from either end.
 */
package org.counterpull.access;
