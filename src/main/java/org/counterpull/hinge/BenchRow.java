package org.counterpull.hinge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.access.Spot;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.PinRow;
import org.counterpull.swing.SwingResult;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Weldment;

/** How a row is held, tacked, tried and greased. */
final class BenchRow {
  /** A go-rod goes through with so much play, mm: common practice, no source. */
  private static final double ROD_PLAY_MM = 0.1;

  private final Weldment weldment;
  private final List<JointPlan> joints;
  private final List<Timed> steps;
  private final Row row;

  BenchRow(Weldment weldment, List<JointPlan> joints, List<Timed> steps, Row row) {
    this.weldment = weldment;
    this.joints = joints;
    this.steps = steps;
    this.row = row;
  }

  PinRow.Bench of(List<SwingResult> swings) {
    Optional<Fixture> rod = fixture(Fixture.Kind.THROUGH_ROD);
    List<Integer> turnAfter =
        steps.stream()
            .filter(s -> s.operation().kind() == Operation.Kind.WELD)
            .filter(s -> s.operation().run().filter(run -> ofRow().contains(run)).isPresent())
            .map(Timed::number)
            .toList();
    return new PinRow.Bench(
        rod.map(Fixture::name),
        rod.flatMap(Fixture::diameterMm).orElse(row.boreMm() - ROD_PLAY_MM),
        fixture(Fixture.Kind.SPACER).isPresent(),
        tackOrder(),
        turnAfter,
        row.holes().stream()
            .mapToInt(hole -> number("ream:" + hole.feature().name()))
            .max()
            .orElse(0),
        grease(swings));
  }

  private Optional<Fixture> fixture(Fixture.Kind kind) {
    return weldment.fixtures().stream()
        .filter(f -> f.kind() == kind && f.parts().stream().filter(row::holds).count() > 1)
        .findFirst();
  }

  /** Runs at the bores' own parts. */
  List<String> ofRow() {
    return joints.stream()
        .filter(j -> row.holds(j.joint().first()) || row.holds(j.joint().second()))
        .flatMap(j -> j.runs().stream())
        .map(RunPlan::name)
        .toList();
  }

  private int number(String id) {
    return steps.stream()
        .filter(s -> s.operation().id().equals(id))
        .mapToInt(Timed::number)
        .findFirst()
        .orElse(0);
  }

  /** Both ends of each piece first, then what lies between them. */
  private List<String> tackOrder() {
    Map<Integer, List<String>> pieces = new LinkedHashMap<>();
    for (Hole hole : row.holes()) {
      pieces.computeIfAbsent(hole.piece(), p -> new ArrayList<>()).add(hole.part().name());
    }
    List<String> order = new ArrayList<>();
    for (List<String> parts : pieces.values()) {
      order.add(parts.get(0));
      if (parts.size() > 1) {
        order.add(parts.get(parts.size() - 1));
        order.addAll(parts.subList(1, parts.size() - 1));
      }
    }
    return order;
  }

  private List<PinRow.Grease> grease(List<SwingResult> swings) {
    List<PinRow.Grease> all = new ArrayList<>();
    for (Feature feature : weldment.features()) {
      if (feature.kind() == Feature.Kind.GREASE_FITTING
          && feature.parts().stream().anyMatch(row::holds)) {
        Optional<Boolean> reached =
            swings.stream()
                .flatMap(s -> s.grease().stream())
                .filter(g -> g.feature().equals(feature.name()))
                .map(g -> g.blockedDeg().isEmpty())
                .reduce(Boolean::logicalAnd);
        all.add(
            new PinRow.Grease(
                feature.name(), number("drill:" + feature.name()), fromSeamDeg(feature), reached));
      }
    }
    return all;
  }

  /** Angle about the row's axis between a fitting and the nearest seam of its part. */
  private Optional<Double> fromSeamDeg(Feature feature) {
    Optional<Double> least = Optional.empty();
    for (Spot spot : Spot.of(weldment, feature)) {
      Vector3D nipple = radial(spot.at().add(spot.axis()));
      for (JointPlan joint : joints) {
        boolean own =
            joint.joint().first().equals(spot.part()) || joint.joint().second().equals(spot.part());
        for (RunPlan run : own ? joint.runs() : List.<RunPlan>of()) {
          Vector3D seam = radial(run.line().path().at(run.line().path().lengthMm() / 2));
          double deg = Math.toDegrees(Vector3D.angle(nipple, seam));
          if (least.isEmpty() || deg < least.get()) {
            least = Optional.of(deg);
          }
        }
      }
    }
    return least;
  }

  private Vector3D radial(Vector3D point) {
    Vector3D arm = point.subtract(row.holes().get(0).at());
    return arm.subtract(row.along().scalarMultiply(arm.dotProduct(row.along())));
  }
}
