/** Steel grades, compositions and what follows from them. */
package org.counterpull.steel;
