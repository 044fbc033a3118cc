package org.counterpull.weldment;

import java.util.List;
import java.util.Optional;

/**
 * Where the weldment is welded.
 *
 * @param ambientC temperature of air and cold parts
 * @param filmWPerM2K film coefficient for all faces, when the file gives one (radiation is then
 *     left out)
 * @param outdoors true when wind can reach the arc
 * @param canBeTurned true when the weldment can be turned over while it is welded
 * @param edgeTools what weld edges are cut with; at least one
 */
public record Surroundings(
    double ambientC,
    Optional<Double> filmWPerM2K,
    boolean outdoors,
    boolean canBeTurned,
    List<EdgeTool> edgeTools) {

  public Surroundings {
    edgeTools = List.copyOf(edgeTools);
  }

  /** A shop that cuts edges with a grinder. */
  public Surroundings(
      double ambientC, Optional<Double> filmWPerM2K, boolean outdoors, boolean canBeTurned) {
    this(ambientC, filmWPerM2K, outdoors, canBeTurned, List.of(EdgeTool.GRINDER));
  }
}
