package org.counterpull.weldment;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.space.Face;

/**
 * Something that must come out true.
 *
 * @param name unique in the weldment
 * @param kind what is compared; the manual defines datum and zone of each
 * @param subjects what is measured, in order: the first is the datum where there is one
 * @param tolerance how far it may be off
 * @param targetMm the wanted distance; empty for the distance as drawn and for every other kind
 */
public record Check(
    String name,
    Kind kind,
    List<Subject> subjects,
    Tolerance tolerance,
    Optional<Double> targetMm) {

  public Check {
    subjects = List.copyOf(subjects);
  }

  /** What is compared. */
  public enum Kind {
    DISTANCE,
    SQUARE,
    STRAIGHT,
    FLAT,
    PARALLEL,
    COAXIAL;

    /** The word used in files and on plans. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * What is measured.
   *
   * @param part name of the part
   * @param face one of its faces; empty for its axis or middle
   */
  public record Subject(String part, Optional<Face> face) {}

  /** How far a check may be off. */
  public sealed interface Tolerance {
    /** A zone in mm (a radius where the manual says so). */
    record Millimetres(double mm) implements Tolerance {}

    /** An ISO 13920 class, A to D or E to H. */
    record Iso13920(char letter) implements Tolerance {}
  }
}
