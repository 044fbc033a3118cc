/**
 * What a weld carries: groups of welds treated as lines under any force and moment, the strength of
 * a throat by EN 1993-1-8 and in the manner of AISC and AWS, the metal beside it, lengths that
 * count, and the throat that a force asks for.
 *
 * <p>Lines have unit throat, so the forces are per length (N/mm) and a throat turns them into
 * stresses. Elastic distribution: safe against the ultimate load of a ductile group. Limits: static
 * loads; fatigue, brittle fracture and the bending of thin parts beside the weld are not looked at.
 */
package org.counterpull.strength;
