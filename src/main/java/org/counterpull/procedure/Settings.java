package org.counterpull.procedure;

import java.util.Optional;

/**
 * What is set, and how fast the torch goes.
 *
 * @param currentA welding current, A
 * @param voltageV arc voltage, V
 * @param travelMmPerS travel speed, mm/s
 * @param wireFeedMPerMin wire feed, m/min, where the row states it
 */
public record Settings(
    Range currentA, Range voltageV, Range travelMmPerS, Optional<Range> wireFeedMPerMin) {
  public Settings {
    Checks.inside("current", currentA, 5, 600, "A");
    Checks.inside("voltage", voltageV, 8, 50, "V");
    Checks.inside("travel speed", travelMmPerS, 0.5, 30, "mm/s");
    wireFeedMPerMin.ifPresent(feed -> Checks.inside("wire feed", feed, 1, 25, "m/min"));
  }

  /** Arc energy (no efficiency) in the middle of the ranges, kJ/mm. */
  public double arcEnergyKJPerMm() {
    return voltageV.middle() * currentA.middle() / travelMmPerS.middle() / 1000;
  }
}
