package org.counterpull.weldment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;

/**
 * What a shop measured about its own welds.
 *
 * @param name unique in the weldment
 * @param process that it holds for; empty for every process
 * @param factors on the published forms, by effect; those that aren't here stay as published
 * @param from what was measured, in words
 */
public record Calibration(
    String name, Optional<WeldingProcess> process, Map<Effect, FactorBand> factors, String from) {

  public Calibration {
    if (factors.isEmpty()) {
      throw new IllegalArgumentException("calibration " + name + " has no factor");
    }
    factors = Collections.unmodifiableMap(new EnumMap<>(factors));
  }

  /** True where it says something about that effect of that process. */
  public boolean covers(WeldingProcess welded, Effect effect) {
    return factors.containsKey(effect) && process.map(p -> p == welded).orElse(true);
  }
}
