/** Points, directions and part axes in space. Lengths are in mm, directions are unit vectors. */
package org.counterpull.space;
