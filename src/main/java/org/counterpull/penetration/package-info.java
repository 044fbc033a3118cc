/**
 * How deep an arc melts into the plate. One correlation of the 1950s with factors that were read
 * off published settings; within 30 % at best. A few macro sections of one's own machine are worth
 * more: the factor can be given.
 */
package org.counterpull.penetration;
