package org.counterpull.weldment;

import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * What a file fixes on a run, instead of a procedure.
 *
 * @param run name of the run
 * @param heat heat per length and travel speed
 * @param shrinkage inherent shrinkage of the run
 * @param on a line of its own on one part, for a bead that joins nothing; empty for a run of a
 *     joint
 */
public record RunGiven(
    String run, Optional<Heat> heat, Optional<Shrinkage> shrinkage, Optional<OnPart> on) {

  /** What is fixed on a run of a joint. */
  public RunGiven(String run, Optional<Heat> heat, Optional<Shrinkage> shrinkage) {
    this(run, heat, shrinkage, Optional.empty());
  }

  /**
   * A straight bead on the surface of a part.
   *
   * @param part name of the part
   * @param from where it begins, in part axes (x from the left end, y and z from the middle of the
   *     box around the section), mm
   * @param to where it ends
   */
  public record OnPart(String part, Vector3D from, Vector3D to) {}

  /**
   * Even power in a box that moves with the arc.
   *
   * @param lengthMm along the travel
   * @param widthMm across
   * @param depthMm into the metal
   */
  public record SourceBox(double lengthMm, double widthMm, double depthMm) {
    public SourceBox {
      if (!(lengthMm > 0 && widthMm > 0 && depthMm > 0)) {
        throw new IllegalArgumentException(
            "source box " + lengthMm + " x " + widthMm + " x " + depthMm + " mm is not above 0");
      }
    }
  }

  /**
   * Heat of a run.
   *
   * @param jPerMm per length
   * @param kind net heat (in the metal) or arc energy (volts times amperes over speed)
   * @param travelMmPerS travel speed
   * @param source how the power is spread; empty for the size of the bead
   */
  public record Heat(double jPerMm, Kind kind, double travelMmPerS, Optional<SourceBox> source) {
    /** Heat spread over the size of the bead. */
    public Heat(double jPerMm, Kind kind, double travelMmPerS) {
      this(jPerMm, kind, travelMmPerS, Optional.empty());
    }

    /** Which of the two energies is meant. */
    public enum Kind {
      NET,
      ARC
    }
  }

  /**
   * Shrinkage of a run, free of restraint.
   *
   * @param acrossMm across the joint, a shrinkage is positive
   * @param angleRad closing angle
   * @param alongN tendon force along the run
   */
  public record Shrinkage(double acrossMm, double angleRad, double alongN) {}
}
