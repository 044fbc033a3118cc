/**
 * The weldment as the program carries it once a file has been read: parts placed in space, the
 * joints between them, what on them is sensitive, what must come out true, and the shop that it is
 * built in.
 *
 * <p>Every value is in the program's own units (mm, N, s, degrees Celsius) and has been validated;
 * defaults have been filled in and are listed in {@link
 * org.counterpull.weldment.Weldment#assumptions()}.
 */
package org.counterpull.weldment;
