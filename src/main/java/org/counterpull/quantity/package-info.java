/** Quantities as people write them and as the program carries them: units, parsing, formatting. */
package org.counterpull.quantity;
