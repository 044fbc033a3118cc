/**
 * What is done at each joint: preparation, weld size, passes, settings, heat, preheat, filler, and
 * what each machine of the shop can make of it.
 */
package org.counterpull.jointplan;
