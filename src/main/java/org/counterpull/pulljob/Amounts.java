package org.counterpull.pulljob;

import java.util.List;

/**
 * What a run wants, free of restraint.
 *
 * @param walls for each wall of the run
 * @param closingMm how much the weld closes between its two walls, towards the wall that goes on;
 *     for a butt or corner nothing beyond what the walls do
 * @param basis how it was worked out
 * @param beyond limits of the closed forms that it leaves, in sentences
 */
record Amounts(List<OfWall> walls, double closingMm, Basis basis, List<String> beyond) {
  Amounts {
    walls = List.copyOf(walls);
    beyond = List.copyOf(beyond);
  }

  /** Where the figures come from. */
  enum Basis {
    CLOSED_FORMS("closed forms"),
    ZONE("zone rule on closed-form peak temperatures"),
    GIVEN("given in the file");

    private final String words;

    Basis(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  /**
   * What one wall wants.
   *
   * @param acrossMm shrinkage across the run
   * @param angleRad angle towards the weld
   * @param alongN tendon force
   * @param alongDepthMm how deep in the wall the tendon force has its middle; below 0 for a force
   *     on the weld line
   */
  record OfWall(double acrossMm, double angleRad, double alongN, double alongDepthMm) {}
}
