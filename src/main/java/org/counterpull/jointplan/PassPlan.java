package org.counterpull.jointplan;

import java.util.Locale;
import java.util.Optional;
import org.counterpull.quantity.Computed;

/**
 * One bead of a run with its settings.
 *
 * @param number from 1, in the order of welding
 * @param layer from 1 at the root
 * @param place in its layer, from 1 at the first part's wall of a groove or the lower part of a
 *     fillet; beads of a layer are laid in the order of their numbers
 * @param kind what the bead is for
 * @param area bead cross-section, mm2
 * @param currentA welding current
 * @param voltageV arc voltage
 * @param travelMmPerS travel speed
 * @param wireFeed m/min; empty for stick and TIG
 * @param arcEnergy kJ/mm, no efficiency
 * @param heatInput kJ/mm, with the k factor of ISO/TR 17671-1
 * @param netHeat J/mm, with the physical arc efficiency
 * @param coolingTime t8/5, s
 * @param arcTimeS arc-on time of this pass
 */
public record PassPlan(
    int number,
    int layer,
    int place,
    Kind kind,
    Computed area,
    double currentA,
    double voltageV,
    double travelMmPerS,
    Optional<Computed> wireFeed,
    Computed arcEnergy,
    Computed heatInput,
    Computed netHeat,
    Computed coolingTime,
    double arcTimeS) {

  /** A bead that is laid beside the one before it in its layer. */
  public PassPlan(
      int number,
      int layer,
      Kind kind,
      Computed area,
      double currentA,
      double voltageV,
      double travelMmPerS,
      Optional<Computed> wireFeed,
      Computed arcEnergy,
      Computed heatInput,
      Computed netHeat,
      Computed coolingTime,
      double arcTimeS) {
    this(
        number,
        layer,
        number,
        kind,
        area,
        currentA,
        voltageV,
        travelMmPerS,
        wireFeed,
        arcEnergy,
        heatInput,
        netHeat,
        coolingTime,
        arcTimeS);
  }

  /** The same bead with another cross-section. */
  public PassPlan withArea(Computed otherArea) {
    return new PassPlan(
        number,
        layer,
        place,
        kind,
        otherArea,
        currentA,
        voltageV,
        travelMmPerS,
        wireFeed,
        arcEnergy,
        heatInput,
        netHeat,
        coolingTime,
        arcTimeS);
  }

  /** What a bead is for. */
  public enum Kind {
    SINGLE,
    ROOT,
    FILL,
    CAP,
    SEALING;

    /** The word used on plans. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
