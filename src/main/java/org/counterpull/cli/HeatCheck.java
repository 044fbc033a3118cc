package org.counterpull.cli;

import java.util.Optional;
import org.counterpull.heatjob.Resolution;

/** How finely the waits of a plan are verified. */
enum HeatCheck {
  NONE(Optional.empty()),
  QUICK(Optional.of(Resolution.QUICK)),
  COARSE(Optional.of(Resolution.COARSE)),
  NORMAL(Optional.of(Resolution.NORMAL)),
  FINE(Optional.of(Resolution.FINE));

  /** What counts when nothing is said. */
  static final HeatCheck USUAL = QUICK;

  private final Optional<Resolution> resolution;

  HeatCheck(Optional<Resolution> resolution) {
    this.resolution = resolution;
  }

  /** The resolution; empty for waits by closed forms. */
  Optional<Resolution> resolution() {
    return resolution;
  }
}
