package org.counterpull.weldment;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * Something on parts that heat, spatter, current or movement can spoil.
 *
 * @param name unique in the weldment
 * @param kind what it is
 * @param parts the parts that it is on; several parts make one feature of several places (a hinge
 *     line's bores)
 * @param at its middle in part axes, mm; empty for the middle of the part
 * @param axis its axis in part axes; empty for the part's own length
 * @param diameterMm of a bore, hole, thread, bearing
 * @param lengthMm along the axis
 * @param tolerance an ISO 286 class such as H8, as written
 * @param material of a seal, bush, coating: the word as written
 * @param limitC the highest temperature that the file allows there
 * @param turnsOnMm diameter of the pin that must turn in it
 * @param removable true when it can be taken out before welding
 * @param states what the file says was done to a vessel
 */
public record Feature(
    String name,
    Kind kind,
    List<String> parts,
    Optional<Vector3D> at,
    Optional<Vector3D> axis,
    Optional<Double> diameterMm,
    Optional<Double> lengthMm,
    Optional<String> tolerance,
    Optional<String> material,
    Optional<Double> limitC,
    Optional<Double> turnsOnMm,
    boolean removable,
    Set<State> states) {

  public Feature {
    parts = List.copyOf(parts);
    states = Set.copyOf(states);
  }

  /** Something that nothing was said of as a vessel. */
  public Feature(
      String name,
      Kind kind,
      List<String> parts,
      Optional<Vector3D> at,
      Optional<Vector3D> axis,
      Optional<Double> diameterMm,
      Optional<Double> lengthMm,
      Optional<String> tolerance,
      Optional<String> material,
      Optional<Double> limitC,
      Optional<Double> turnsOnMm,
      boolean removable) {
    this(
        name,
        kind,
        parts,
        at,
        axis,
        diameterMm,
        lengthMm,
        tolerance,
        material,
        limitC,
        turnsOnMm,
        removable,
        Set.of());
  }

  /** True for something that can hold a pressure or a residue. */
  public boolean holdsSomething() {
    return kind == Kind.VESSEL || kind == Kind.ACCUMULATOR || kind == Kind.GAS_STRUT;
  }

  /** What makes a vessel fit for heat; all three together. */
  public enum State {
    OPEN,
    DRAINED,
    CLEANED;

    /** The word used in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What a feature is. */
  public enum Kind {
    BORE,
    SEAL,
    BEARING,
    THREAD,
    MACHINED_FACE,
    HOLE,
    GREASE_FITTING,
    COATING,
    CAPTIVE_PIECE,
    VESSEL,
    ACCUMULATOR,
    GAS_STRUT;

    /** The words used in files and on plans. */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }
}
