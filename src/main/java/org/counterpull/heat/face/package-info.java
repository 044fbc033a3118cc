/**
 * What a surface gives to its surroundings: a film and radiation to the air, natural convection by
 * the surface's direction to gravity, contact to a body that holds its temperature (table, clamp,
 * copper block, wet rag).
 */
package org.counterpull.heat.face;
