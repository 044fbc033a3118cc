package org.counterpull.mount;

import java.util.List;
import java.util.Optional;

/**
 * Directly, or how else: all ways side by side.
 *
 * @param mount what was asked
 * @param ways in the order of {@link Way}; only those that make sense here
 * @param taken the way to take
 * @param verdict in sentences, the first of them for the weld as drawn
 * @param unknown what isn't known
 * @param hole the lug's hole against its pin; empty where no pin is given
 */
public record MountAnswer(
    MountCase mount,
    List<WayAnswer> ways,
    Way taken,
    List<String> verdict,
    List<String> unknown,
    Optional<LugHole> hole) {
  public MountAnswer {
    ways = List.copyOf(ways);
    verdict = List.copyOf(verdict);
    unknown = List.copyOf(unknown);
  }

  /** The same with the lug's hole looked at. */
  public MountAnswer with(LugHole lugHole) {
    return new MountAnswer(mount, ways, taken, verdict, unknown, Optional.of(lugHole));
  }

  /** The answer for a way. */
  public WayAnswer of(Way way) {
    return ways.stream().filter(w -> w.way() == way).findFirst().orElseThrow();
  }
}
