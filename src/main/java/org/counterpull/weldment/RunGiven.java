package org.counterpull.weldment;

import java.util.Optional;

/**
 * What a file fixes on a run, instead of a procedure.
 *
 * @param run name of the run
 * @param heat heat per length and travel speed
 * @param shrinkage inherent shrinkage of the run
 */
public record RunGiven(String run, Optional<Heat> heat, Optional<Shrinkage> shrinkage) {

  /**
   * Heat of a run.
   *
   * @param jPerMm per length
   * @param kind net heat (in the metal) or arc energy (volts times amperes over speed)
   * @param travelMmPerS travel speed
   */
  public record Heat(double jPerMm, Kind kind, double travelMmPerS) {
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
