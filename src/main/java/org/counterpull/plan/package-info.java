/**
 * The plan: everything that a person needs to carry the job out, as data. Knows nothing of files or
 * pages.
 */
package org.counterpull.plan;
