package org.counterpull.weldment;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A piece of the weldment that turns about a hinge axis.
 *
 * @param name unique in the weldment
 * @param moving parts that turn; every part that joints tie to one of them turns with it
 * @param about the part whose axis is the hinge axis; angles are right-handed about its own x
 * @param fromDeg one end of the range; 0 is as drawn
 * @param toDeg the other end
 * @param cylinder that moves it
 */
public record Swing(
    String name,
    List<String> moving,
    String about,
    double fromDeg,
    double toDeg,
    Optional<Cylinder> cylinder) {
  public Swing {
    moving = List.copyOf(moving);
  }

  /**
   * A hydraulic cylinder between two pins.
   *
   * @param fixedAt its pin on what stands still, weldment axes, mm
   * @param movingAt its pin on what turns, weldment axes as drawn, mm
   * @param boreMm diameter of the piston
   * @param rodMm diameter of the rod
   * @param closedMm from pin to pin with the rod in
   * @param strokeMm travel of the rod
   * @param pressureMPa highest pressure that it gets
   * @param reserveMm stroke that is to be left at either end
   */
  public record Cylinder(
      Vector3D fixedAt,
      Vector3D movingAt,
      double boreMm,
      double rodMm,
      double closedMm,
      double strokeMm,
      double pressureMPa,
      double reserveMm) {}
}
