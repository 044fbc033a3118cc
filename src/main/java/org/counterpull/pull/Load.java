package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Something that strains the assembly as it stands: forces along coordinates, inherent strains
 * inside bodies, or both at once.
 *
 * @param forces forces, N or N mm by coordinate
 * @param strains inherent strains
 */
public record Load(List<Force> forces, List<Strain> strains) {

  /** A force of that size doing work on a coordinate. */
  public record Force(Coordinate on, double size) {}

  /** An inherent strain of one body. */
  public record Strain(int body, FreeResponse response) {}

  public Load {
    forces = List.copyOf(forces);
    strains = List.copyOf(strains);
  }

  /** A single force. */
  public static Load force(Coordinate on, double size) {
    return new Load(List.of(new Force(on, size)), List.of());
  }

  /** A single inherent strain. */
  public static Load strain(int body, FreeResponse response) {
    return new Load(List.of(), List.of(new Strain(body, response)));
  }

  /**
   * The shrinkage force of a piece of weld: it draws the piece's two ends together.
   *
   * @param assembly the one that both points belong to
   * @param from one end of the piece, on the weld line
   * @param to its other end
   * @param forceN tendon force, N
   */
  public static Load tendon(
      Assembly assembly, MaterialPoint from, MaterialPoint to, double forceN) {
    Vector3D along = to.position().subtract(from.position()).normalize();
    return force(assembly.opening(from, to, along), -forceN);
  }

  /** Both at once. */
  public Load plus(Load other) {
    List<Force> allForces = new ArrayList<>(forces);
    allForces.addAll(other.forces);
    List<Strain> allStrains = new ArrayList<>(strains);
    allStrains.addAll(other.strains);
    return new Load(allForces, allStrains);
  }
}
