/** Welding positions of ISO 6947, as words that files, procedures and plans share. */
package org.counterpull.position;
