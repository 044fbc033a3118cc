/**
 * How warm the metal must be before and between passes, so that hydrogen leaves it uncracked: EN
 * 1011-2 methods A (its table without preheat) and B, the table and the hydrogen control method of
 * AWS D1.1, and the greatest interpass temperatures.
 *
 * <p>The methods disagree by tens of kelvin, and each holds only inside its box; outside, the
 * answer says so.
 */
package org.counterpull.preheat;
