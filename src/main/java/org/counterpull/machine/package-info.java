/** Power sources and what they can weld. */
package org.counterpull.machine;
