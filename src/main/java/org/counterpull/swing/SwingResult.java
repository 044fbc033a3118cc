package org.counterpull.swing;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Computed;
import org.counterpull.weldment.Swing;

/**
 * What was found of a swing.
 *
 * @param swing what was asked
 * @param moving names of all parts that turn
 * @param massKg of what turns
 * @param clash the first clash on the way; empty when the range is free
 * @param positions over the range, both ends among them
 * @param grease how the grease gun gets to each fitting
 * @param ports where ports and hoses have most room; empty without a cylinder
 * @param faults what keeps it from working, each with a way forward
 */
public record SwingResult(
    Swing swing,
    List<String> moving,
    double massKg,
    Optional<Clash> clash,
    List<Position> positions,
    List<Grease> grease,
    Optional<Ports> ports,
    List<Fault> faults) {
  public SwingResult {
    moving = List.copyOf(moving);
    positions = List.copyOf(positions);
    grease = List.copyOf(grease);
    faults = List.copyOf(faults);
  }

  /**
   * Two parts that meet.
   *
   * @param movingPart on what turns; {@code cylinder} for the cylinder's barrel
   * @param standingPart on what stands still
   * @param angleDeg where they first meet
   */
  public record Clash(String movingPart, String standingPart, double angleDeg) {}

  /**
   * One position.
   *
   * @param angleDeg from the drawn position
   * @param drive what the cylinder does there; empty without one
   */
  public record Position(double angleDeg, Optional<Drive> drive) {}

  /**
   * A cylinder at one position.
   *
   * @param lengthMm from pin to pin
   * @param armMm signed lever arm
   * @param pushN force that it can push with
   * @param pullN force that it can pull with
   * @param neededN force that holds the weight: positive is a push
   */
  public record Drive(
      double lengthMm, Computed armMm, Computed pushN, Computed pullN, Computed neededN) {}

  /**
   * Grease access.
   *
   * @param feature name of the fitting
   * @param reachedDeg positions in which the gun gets there
   * @param blockedDeg positions in which it does not
   * @param blockedBy parts in its way then
   */
  public record Grease(
      String feature, List<Double> reachedDeg, List<Double> blockedDeg, List<String> blockedBy) {
    public Grease {
      reachedDeg = List.copyOf(reachedDeg);
      blockedDeg = List.copyOf(blockedDeg);
      blockedBy = List.copyOf(blockedBy);
    }
  }

  /**
   * Room beside the barrel.
   *
   * @param side the side with most room, in words
   * @param roomMm least room there over the range
   * @param worstSide the side with least room
   * @param worstRoomMm least room there
   */
  public record Ports(String side, double roomMm, String worstSide, double worstRoomMm) {}

  /**
   * What keeps it from working.
   *
   * @param why the reason
   * @param wayForward what would change it
   */
  public record Fault(String why, String wayForward) {}
}
