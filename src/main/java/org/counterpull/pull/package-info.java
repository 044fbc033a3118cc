/**
 * The shape engine: what a linear elastic assembly does when its welds are laid one after the other
 * and each pulls as it cools.
 *
 * <p>Bodies ({@link org.counterpull.pull.ElasticBody}) are beams, plates and rigid pieces,
 * condensed to the nodes that the outside needs. {@link org.counterpull.pull.Assembly} says where
 * they may be linked, what is read and what loads them; {@link org.counterpull.pull.Structure} lays
 * segments, takes tacks and clamps out and keeps the books: which run moved which reading by how
 * much. Lengths are in mm, forces in N, angles in rad.
 *
 * <p>Left out: self-weight, contact, large deflection, warping torsion of open sections, yielding.
 */
package org.counterpull.pull;
