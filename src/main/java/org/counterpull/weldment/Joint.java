package org.counterpull.weldment;

import java.util.List;
import java.util.Optional;
import org.counterpull.fillet.FilletThroat;

/**
 * Two parts that are welded to each other.
 *
 * @param name unique in the weldment
 * @param first the part that is fitted
 * @param second the part that it is fitted onto
 * @param weld what kind of weld
 * @param size the size that the file gives; empty for the least size that the thickness asks for
 * @param sides which sides to weld; empty for every side that can be reached
 * @param gapMm the gap that the weld bridges; 0 for parts that touch
 * @param clearanceMm a gap that must stay open (something turns there); 0 for none
 * @param fullPenetration true when the file asks for it
 * @param intermittent stitches instead of a continuous weld
 * @param loadN force on the joint from the file, N
 * @param machine name of the machine that the file asks for
 * @param holes what plug and slot welds fill; empty for every other weld
 */
public record Joint(
    String name,
    String first,
    String second,
    WeldKind weld,
    Optional<GivenSize> size,
    List<Side> sides,
    double gapMm,
    double clearanceMm,
    boolean fullPenetration,
    Optional<Intermittent> intermittent,
    Optional<Double> loadN,
    Optional<String> machine,
    Optional<Holes> holes) {

  public Joint {
    sides = List.copyOf(sides);
  }

  /** A joint without plugs or slots. */
  public Joint(
      String name,
      String first,
      String second,
      WeldKind weld,
      Optional<GivenSize> size,
      List<Side> sides,
      double gapMm,
      double clearanceMm,
      boolean fullPenetration,
      Optional<Intermittent> intermittent,
      Optional<Double> loadN,
      Optional<String> machine) {
    this(
        name,
        first,
        second,
        weld,
        size,
        sides,
        gapMm,
        clearanceMm,
        fullPenetration,
        intermittent,
        loadN,
        machine,
        Optional.empty());
  }

  /** The kinds of weld that a file can ask for. */
  public enum WeldKind {
    /** Left to the planner, by the joint's shape and thickness. */
    AUTO,
    FILLET,
    SQUARE,
    V,
    DOUBLE_V,
    BEVEL,
    DOUBLE_BEVEL,
    FLARE_BEVEL,
    FLARE_V,
    U,
    J,
    /** A V with a broad root face. */
    Y,
    DOUBLE_U,
    DOUBLE_J,
    /** Steep flanks and a wide gap on a backing strip. */
    STEEP_V,
    STEEP_BEVEL,
    /** Holes in the first part, filled. */
    PLUG,
    /** Slots in the first part, filled. */
    SLOT
  }

  /** A weld size from the file: leg z or throat a, in mm; the two are never mixed up. */
  public sealed interface GivenSize {
    /** The leg that it means between faces at an angle, mm. */
    double legMm(double facesDeg);

    /** The effective throat that it means between faces at an angle, mm. */
    double throatMm(double facesDeg);

    /** Leg length z. */
    record Leg(double legMm) implements GivenSize {
      @Override
      public double legMm(double facesDeg) {
        return legMm;
      }

      @Override
      public double throatMm(double facesDeg) {
        return legMm * FilletThroat.perLeg(facesDeg);
      }
    }

    /** Effective throat a. */
    record Throat(double throatMm) implements GivenSize {
      @Override
      public double legMm(double facesDeg) {
        return FilletThroat.legMm(throatMm, facesDeg);
      }

      @Override
      public double throatMm(double facesDeg) {
        return throatMm;
      }
    }
  }

  /**
   * Stitches.
   *
   * @param lengthMm of each
   * @param clearMm between two
   */
  public record Intermittent(double lengthMm, double clearMm) {}

  /**
   * Holes in the first part that are filled with weld metal, in a row along the middle of the
   * overlap.
   *
   * @param widthMm diameter of a hole, width of a slot
   * @param lengthMm of a slot, ends included; the diameter for a hole
   * @param count how many
   */
  public record Holes(double widthMm, double lengthMm, int count) {
    /** Cross-section of one, mm2. */
    public double areaMm2() {
      return widthMm * (lengthMm - widthMm) + Math.PI * widthMm * widthMm / 4;
    }

    /** Distance from the middle of one to the middle of the next: AWS D1.1, from memory. */
    public double pitchMm() {
      return lengthMm > widthMm ? 2 * lengthMm : 4 * widthMm;
    }
  }
}
