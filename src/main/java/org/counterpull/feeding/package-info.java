/** Wire feed, transfer modes and deposition. */
package org.counterpull.feeding;
