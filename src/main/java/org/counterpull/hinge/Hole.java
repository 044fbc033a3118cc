package org.counterpull.hinge;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.access.Spot;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * A bore of a row.
 *
 * @param feature that it belongs to
 * @param part that it is in
 * @param piece number of the welded piece
 * @param at its middle, weldment axes, mm
 * @param lengthMm along the row
 */
record Hole(Feature feature, Part part, int piece, Vector3D at, double lengthMm) {
  private static final double ALONG = 0.9;

  static Hole of(Weldment weldment, Feature feature, Spot spot, int piece) {
    Part part = weldment.part(spot.part());
    return new Hole(
        feature,
        part,
        piece,
        spot.at(),
        feature.lengthMm().orElseGet(() -> through(part, spot.axis())));
  }

  /** What a drill along an axis goes through. */
  private static double through(Part part, Vector3D axis) {
    Vector3D local = part.frame().directionInto(axis);
    if (Math.abs(local.getX()) > ALONG) {
      return part.lengthMm();
    }
    return Math.abs(local.getY()) > ALONG ? part.stock().acrossMm() : part.stock().upMm();
  }

  boolean barrel() {
    return part.stock() instanceof RoundTube;
  }

  /** The end that comes first along a direction, and the other one. */
  Vector3D end(Vector3D along, boolean first) {
    return at.add((first ? -0.5 : 0.5) * lengthMm, along);
  }
}
