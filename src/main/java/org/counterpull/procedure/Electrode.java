package org.counterpull.procedure;

/**
 * Wire, rod or covered electrode of a procedure.
 *
 * @param classification AWS classification
 * @param diameterMm diameters that the settings hold for, mm
 * @param polarity current and pole
 */
public record Electrode(String classification, Range diameterMm, Polarity polarity) {
  public Electrode {
    if (classification.isBlank()) {
      throw new IllegalArgumentException("an electrode needs a classification");
    }
    Checks.inside("electrode diameter", diameterMm, 0.5, 8, "mm");
  }
}
