/**
 * The heat of a job: lays a weldment out as blocks of metal, strikes the arcs of its runs in order,
 * and answers how warm it gets where and when.
 *
 * <p>Parts become structured blocks with fine cells at the welds; fitted faces, gaps and laid weld
 * metal join them. Net heat of every pass is moved along its line at its travel speed.
 *
 * <p>Limits: corner radii are left out, mitred ends are square at mid-length, holes are filled.
 * Weld metal conducts from the moment it is laid but stores nothing. Insides of tubes lose no heat
 * (unless the file gives a film), clamps and tables carry none. The flame of preheat is part of a
 * plan; the heat of a written order is without it.
 */
package org.counterpull.heatjob;
