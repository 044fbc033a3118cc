package org.counterpull.hinge;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.fit.WarmBow;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PlanHeat.Spot;
import org.counterpull.quantity.Computed;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.Weldment;

/** A row of bores while it is warm: what bows it and what takes up its side play. */
final class WarmRow {
  private static final double ALONG = 0.99;

  /** Neighbours that stand farther apart do not guide each other, mm. */
  private static final double NEIGHBOURS_MM = 20;

  private final Weldment weldment;
  private final Row row;

  WarmRow(Weldment weldment, Row row) {
    this.weldment = weldment;
    this.row = row;
  }

  PinRow.Warm of(Optional<Computed> left, Optional<PlanHeat> heat) {
    Optional<Part> carrier = row.holes().size() > 2 ? carrier() : Optional.empty();
    Optional<Computed> binds =
        left.flatMap(
            c ->
                carrier.map(
                    p ->
                        WarmBow.kelvin(
                            Math.max(0, c.value()), Math.max(1, depthMm(p)), row.lengthMm())));
    Optional<Double> play = sidePlayMm();
    List<Spot> spots = spots(heat);
    return new PinRow.Warm(
        carrier.map(Part::name),
        binds,
        play,
        play.map(mm -> mm / (WarmBow.EXPANSION_PER_K * row.lengthMm() / 2)),
        spots.stream().map(Spot::peakC).max(Comparator.naturalOrder()),
        heat.flatMap(
            h -> spots.stream().map(s -> at(s, lastArcS(h))).max(Comparator.naturalOrder())));
  }

  /** The part that the row runs along: of the first bore's piece, as long as the row, nearest. */
  private Optional<Part> carrier() {
    Hole first = row.holes().get(0);
    List<String> piece = Pieces.around(weldment, List.of(first.part().name()));
    return weldment.parts().stream()
        .filter(part -> piece.contains(part.name()))
        .filter(part -> Math.abs(part.frame().x().dotProduct(row.along())) > ALONG)
        .filter(part -> part.lengthMm() >= row.lengthMm() && !row.holds(part.name()))
        .min(Comparator.comparingDouble(part -> beside(part).getNorm()));
  }

  /** From a part's axis to the row's, square to it. */
  private Vector3D beside(Part part) {
    Vector3D to = row.holes().get(0).at().subtract(part.frame().origin());
    return to.subtract(row.along().scalarMultiply(to.dotProduct(row.along())));
  }

  private double depthMm(Part part) {
    Vector3D local = part.frame().directionInto(beside(part));
    return Math.abs(local.getY()) > Math.abs(local.getZ())
        ? part.stock().acrossMm()
        : part.stock().upMm();
  }

  /** Least play between neighbours of different pieces. */
  private Optional<Double> sidePlayMm() {
    Optional<Double> least = Optional.empty();
    for (int i = 1; i < row.holes().size(); i++) {
      Hole before = row.holes().get(i - 1);
      Hole after = row.holes().get(i);
      double gap =
          row.alongMm(after.end(row.along(), true)) - row.alongMm(before.end(row.along(), false));
      boolean guides = before.piece() != after.piece() && gap >= 0 && gap <= NEIGHBOURS_MM;
      if (guides && (least.isEmpty() || gap < least.get())) {
        least = Optional.of(gap);
      }
    }
    return least;
  }

  private List<Spot> spots(Optional<PlanHeat> heat) {
    return heat.stream()
        .flatMap(h -> h.spots().stream())
        .filter(Spot::feature)
        .filter(s -> row.holes().stream().anyMatch(hole -> hole.feature().name().equals(s.name())))
        .toList();
  }

  private static double lastArcS(PlanHeat heat) {
    return heat.starts().stream().mapToDouble(PlanHeat.PassStart::startS).max().orElse(0);
  }

  /** The first note after a moment, or the last one of all. */
  private static double at(Spot spot, double timeS) {
    for (int i = 0; i < spot.timesS().size(); i++) {
      if (spot.timesS().get(i) >= timeS) {
        return spot.tempsC().get(i);
      }
    }
    return spot.tempsC().isEmpty() ? spot.peakC() : spot.tempsC().get(spot.tempsC().size() - 1);
  }
}
