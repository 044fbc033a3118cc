/** Stock: the sections that parts are cut from. Dimensions in mm. */
package org.counterpull.stock;
