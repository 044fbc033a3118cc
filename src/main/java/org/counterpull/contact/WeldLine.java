package org.counterpull.contact;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.position.WeldingPosition;
import org.counterpull.weldment.Side;

/**
 * A line that can be welded: the future place of one run.
 *
 * @param run name of the run: {@code joint/side}, with {@code #n} where a side has several lines
 * @param joint name of the joint
 * @param side in the axes of the joint's second part
 * @param path where the root of the weld runs; for a flare the line on which the surfaces touch
 * @param opening unit vector at mid-length that points out of the corner, where the torch comes
 *     from; for a flare square to the face of the weld that fills it flush
 * @param dihedralDeg angle between the two faces that meet along the line: 90 for a square fillet,
 *     180 for a flush butt; for a flare the angle is taken where the surfaces are 2 mm further
 *     apart than at the root
 * @param shape what kind of weld fits there
 * @param firstWallMm wall of the first part at the line
 * @param secondWallMm wall of the second part at the line
 * @param flareRadiusMm outside radius of the round surface of a flare groove
 * @param gapMm mean opening between the two parts along the line
 * @param positions ISO 6947 position for every lay of the weldment
 * @param reach whether a torch or electrode gets there
 */
public record WeldLine(
    String run,
    String joint,
    Side side,
    LinePath path,
    Vector3D opening,
    double dihedralDeg,
    Shape shape,
    double firstWallMm,
    double secondWallMm,
    Optional<Double> flareRadiusMm,
    double gapMm,
    Map<Lay, WeldingPosition> positions,
    Reach reach) {

  public WeldLine {
    positions = Collections.unmodifiableMap(new EnumMap<>(positions));
  }

  /** The same line welded from its other end. */
  public WeldLine reversed() {
    return new WeldLine(
        run,
        joint,
        side,
        path.reversed(),
        opening,
        dihedralDeg,
        shape,
        firstWallMm,
        secondWallMm,
        flareRadiusMm,
        gapMm,
        positions,
        reach);
  }

  /** The same line when no order of work brings the parts in its way after it. */
  public WeldLine outOfReach() {
    return new WeldLine(
        run,
        joint,
        side,
        path,
        opening,
        dihedralDeg,
        shape,
        firstWallMm,
        secondWallMm,
        flareRadiusMm,
        gapMm,
        positions,
        new Reach(reach.share(), reach.blockedBy(), true));
  }

  /** ISO 6947 position for the weldment as drawn. */
  public WeldingPosition position() {
    return positions.get(Lay.AS_DRAWN);
  }

  /** ISO 6947 position for another lay of the weldment. */
  public WeldingPosition position(Lay lay) {
    return positions.get(lay);
  }

  /** What kind of weld fits along a line. */
  public enum Shape {
    /** An inside corner. */
    FILLET,
    /** Two edges flush with each other. */
    BUTT,
    /** An outside corner whose edges meet. */
    OUTSIDE_CORNER,
    /** A round surface against a flat one. */
    FLARE_BEVEL,
    /** Two round surfaces. */
    FLARE_V,
    /** A hole in the first part, filled; its line runs on the first part's outer face. */
    PLUG
  }

  /**
   * Whether a torch or electrode reaches the line.
   *
   * @param share share of the line's points from which the cone is free, 0 to 1
   * @param blockedBy names of the parts in the way, sorted; empty when the share is 1
   * @param inAnyOrder true when no order of work brings the parts in the way after the run
   */
  public record Reach(double share, List<String> blockedBy, boolean inAnyOrder) {
    public Reach {
      blockedBy = List.copyOf(blockedBy);
    }

    /** With parts in the way that may be fitted later. */
    public Reach(double share, List<String> blockedBy) {
      this(share, blockedBy, false);
    }

    /**
     * True when only parts that are not of the joint are in the way: it can be welded before them.
     */
    public boolean openBefore(String first, String second) {
      return !open()
          && !inAnyOrder
          && !blockedBy.isEmpty()
          && !blockedBy.contains(first)
          && !blockedBy.contains(second);
    }

    /** True when at least nine tenths of the line can be reached. */
    public boolean open() {
      return share >= 0.9;
    }
  }
}
