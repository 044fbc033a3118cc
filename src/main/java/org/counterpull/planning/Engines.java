package org.counterpull.planning;

import java.util.Optional;
import org.counterpull.heatjob.Resolution;

/**
 * What of a plan is worked out by full models; closed forms give the rest.
 *
 * @param waits how finely the heat model works out the waits; empty for waits by closed forms
 * @param mounts whether the ways of fastening are compared wherever closed forms say that a weld
 *     comes near a bore, seal, bearing, thread or coating
 */
public record Engines(Optional<Resolution> waits, boolean mounts) {
  /** Closed forms alone. */
  public static final Engines NONE = new Engines(Optional.empty(), false);

  /** Waits alone. */
  public static Engines waits(Optional<Resolution> resolution) {
    return new Engines(resolution, false);
  }
}
