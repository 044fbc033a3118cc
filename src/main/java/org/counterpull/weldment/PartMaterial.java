package org.counterpull.weldment;

import java.util.Optional;
import org.counterpull.steel.Composition;

/**
 * What is known of a part's material.
 *
 * @param designation the grade as the file says it, or {@code "unknown"}
 * @param certainty how it is known
 * @param composition the composition to calculate with; empty when unknown or when the family has
 *     no carbon equivalent
 * @param constants material constants that the file gives instead of tables
 */
public record PartMaterial(
    String designation,
    Certainty certainty,
    Optional<Composition> composition,
    Optional<MaterialConstants> constants) {

  /** How a composition is known. */
  public enum Certainty {
    /** From the certificate, given in the file. */
    CERTIFIED,
    /** Typical values of a stated grade: an assumption that the plan lists. */
    TYPICAL,
    /** Nobody knows: restrictions apply, nothing is guessed. */
    UNKNOWN
  }
}
