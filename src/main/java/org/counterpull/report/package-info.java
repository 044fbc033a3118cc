/**
 * The plan on paper, on a phone, on a terminal and for machines: plan.json, plan.md, plan.html and
 * a summary, and the folder that they are written to.
 *
 * <p>All four say the same; none computes anything. Pages need no network and no script to be read.
 */
package org.counterpull.report;
