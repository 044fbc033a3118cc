package org.counterpull.heat.block;

import java.util.List;

/**
 * A piece of surface that belongs to one cell.
 *
 * @param cell the cell behind it, as {@link Block} numbers them
 * @param side the face of the block that it is part of
 * @param centre in world coordinates
 * @param normal outward unit normal in world coordinates
 * @param areaMm2 exact area
 * @param depthMm conduction length from the cell's temperature to the surface, per area
 * @param corners flat convex polygon that stands for it when faces are laid over each other
 */
public record Patch(
    int cell,
    Side side,
    Vec3 centre,
    Vec3 normal,
    double areaMm2,
    double depthMm,
    List<Vec3> corners) {

  public Patch {
    corners = List.copyOf(corners);
  }

  /** The same patch in world coordinates, given in a frame's. */
  Patch placed(Frame frame, int firstCell) {
    return new Patch(
        cell + firstCell,
        side,
        frame.toWorld(centre),
        frame.directionToWorld(normal),
        areaMm2,
        depthMm,
        corners.stream().map(frame::toWorld).toList());
  }
}
