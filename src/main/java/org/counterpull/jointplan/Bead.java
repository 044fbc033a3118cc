package org.counterpull.jointplan;

/**
 * One bead before it has settings.
 *
 * @param number from 1, in the order of welding
 * @param layer from 1 at the root
 * @param place in its layer, from 1 at the first part's wall of a groove or the lower part of a
 *     fillet
 * @param kind what it is for
 * @param areaMm2 cross-section
 */
public record Bead(int number, int layer, int place, PassPlan.Kind kind, double areaMm2) {
  /** A bead that is alone in its layer. */
  public Bead(int number, int layer, PassPlan.Kind kind, double areaMm2) {
    this(number, layer, 1, kind, areaMm2);
  }
}
