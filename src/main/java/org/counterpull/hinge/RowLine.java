package org.counterpull.hinge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.fit.AxisZone;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.weldment.Check;

/**
 * The line that a row's bores make when all is welded. Each welded piece has one of its own: hung
 * on the pin, pieces come into line with each other.
 */
final class RowLine {
  private final Row row;
  private final PullAnswer shape;
  private final Moved moved;
  private final Map<Integer, AxisZone> zones = new TreeMap<>();

  RowLine(Row row, PullAnswer shape) {
    this.row = row;
    this.shape = shape;
    this.moved = new Moved(shape);
    for (Hole hole : row.holes()) {
      zones.computeIfAbsent(hole.piece(), piece -> AxisZone.of(ends(piece)));
    }
  }

  private List<AxisZone.Off> ends(int piece) {
    List<AxisZone.Off> ends = new ArrayList<>();
    for (Hole hole : row.holes()) {
      if (hole.piece() == piece) {
        ends.add(off(hole, true));
        ends.add(off(hole, false));
      }
    }
    return ends;
  }

  private AxisZone.Off off(Hole hole, boolean first) {
    Vector3D end = hole.end(row.along(), first);
    Vector3D shift = moved.shift(hole.part().name(), end);
    return new AxisZone.Off(
        row.alongMm(end), shift.dotProduct(row.one()), shift.dotProduct(row.other()));
  }

  /** Off its piece's line: one end of a bore. */
  AxisZone.Off end(Hole hole, boolean first) {
    int number = 0;
    for (Hole before : row.holes().subList(0, row.holes().indexOf(hole))) {
      number += before.piece() == hole.piece() ? 1 : 0;
    }
    return zones.get(hole.piece()).points().get(2 * number + (first ? 0 : 1));
  }

  /** How far a bore's middle goes square to the axis. */
  double movedMm(Hole hole) {
    Vector3D shift = moved.shift(hole.part().name(), hole.at());
    return Math.hypot(shift.dotProduct(row.one()), shift.dotProduct(row.other()));
  }

  /**
   * Radius of the widest piece's zone with its band: that of the coaxial check on these bores where
   * the file has one, else that of the angle of a single run.
   */
  Band zone() {
    double radius = zones.values().stream().mapToDouble(AxisZone::radiusMm).max().orElseThrow();
    Optional<CheckAnswer> check = coaxial();
    if (check.isPresent()) {
      Band band = check.get().released();
      double central =
          Math.abs(check.get().shares().stream().mapToDouble(PullAnswer.Share::mm).sum());
      if (central > 0) {
        double scale = radius / central;
        return new Band(scale * band.expected(), scale * band.low(), scale * band.high());
      }
    }
    FactorBand factor = FactorBand.published(Effect.ANGLE).ofOneRun();
    double expected = radius * factor.median();
    return new Band(expected, expected / factor.within(), expected * factor.within());
  }

  /** What each run does to it, the most first; empty without a coaxial check. */
  List<Share> shares() {
    return coaxial().map(CheckAnswer::shares).orElse(List.of());
  }

  private Optional<CheckAnswer> coaxial() {
    return shape.checks().stream()
        .filter(c -> c.verdict() != Verdict.UNTOLD && c.check().kind() == Check.Kind.COAXIAL)
        .filter(
            c ->
                row.holes().stream()
                    .allMatch(
                        hole ->
                            c.check().subjects().stream()
                                .anyMatch(s -> s.part().equals(hole.part().name()))))
        .findFirst();
  }
}
