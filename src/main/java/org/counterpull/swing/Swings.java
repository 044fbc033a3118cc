package org.counterpull.swing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Solid;
import org.counterpull.swing.SwingResult.Clash;
import org.counterpull.swing.SwingResult.Fault;
import org.counterpull.swing.SwingResult.Position;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;

/** Turns every swing of a weldment through its range. */
public final class Swings {
  /** Positions that are looked at beside the two ends. */
  private static final int BETWEEN = 7;

  private final Weldment weldment;
  private final Swing swing;
  private final Turning turning;
  private final List<String> moving;
  private final Map<String, Solid> solids = new LinkedHashMap<>();

  private Swings(Weldment weldment, Swing swing) {
    this.weldment = weldment;
    this.swing = swing;
    turning = Turning.about(weldment.part(swing.about()));
    moving = Pieces.around(weldment, swing.moving());
    weldment.parts().forEach(part -> solids.put(part.name(), Solid.of(part)));
  }

  /** What was found of each swing, file order. */
  public static List<SwingResult> of(Weldment weldment) {
    return weldment.swings().stream().map(swing -> new Swings(weldment, swing).result()).toList();
  }

  private SwingResult result() {
    Optional<Clash> clash =
        clash()
            .or(
                () ->
                    swing
                        .cylinder()
                        .flatMap(c -> BarrelClash.of(turning, swing, c, solids, moving)));
    Optional<CylinderWork> work =
        swing.cylinder().map(c -> new CylinderWork(turning, c, weightN(), centre()));
    List<Position> positions =
        angles().stream().map(deg -> new Position(deg, work.map(w -> w.at(deg)))).toList();
    List<SwingResult.Grease> grease = new GreaseAccess(weldment, turning, moving).of(angles());
    List<Fault> faults = new ArrayList<>();
    clash.ifPresent(c -> faults.add(fault(c)));
    work.ifPresent(w -> faults.addAll(w.faults(swing)));
    grease.stream().filter(g -> g.reachedDeg().isEmpty()).map(Swings::fault).forEach(faults::add);
    return new SwingResult(
        swing,
        moving,
        massKg(),
        clash,
        positions,
        grease,
        swing.cylinder().map(c -> BarrelRoom.of(turning, c, solids, moving, angles())),
        faults);
  }

  private List<Double> angles() {
    List<Double> angles = new ArrayList<>();
    for (int i = 0; i <= BETWEEN + 1; i++) {
      angles.add(swing.fromDeg() + (swing.toDeg() - swing.fromDeg()) * i / (BETWEEN + 1));
    }
    return angles;
  }

  private Optional<Clash> clash() {
    List<Solid> standing = new ArrayList<>();
    solids.forEach(
        (name, solid) -> {
          if (!moving.contains(name)) {
            standing.add(solid);
          }
        });
    if (standing.isEmpty()) {
      return Optional.empty();
    }
    double low = Math.min(swing.fromDeg(), swing.toDeg());
    double high = Math.max(swing.fromDeg(), swing.toDeg());
    double start = low <= 0 && high >= 0 ? 0 : swing.fromDeg();
    ClashSearch search = new ClashSearch(turning, standing);
    List<Clash> clashes = new ArrayList<>();
    for (String name : moving) {
      for (double end : new double[] {low, high}) {
        search
            .first(solids.get(name), start, end)
            .map(met -> new Clash(name, met.other().name(), met.deg()))
            .ifPresent(clashes::add);
      }
    }
    return clashes.stream().min(Comparator.comparingDouble(c -> Math.abs(c.angleDeg() - start)));
  }

  private double massKg() {
    return moving.stream().map(weldment::part).mapToDouble(PartMass::kg).sum();
  }

  private double weightN() {
    return massKg() * CylinderWork.GRAVITY_M_PER_S2;
  }

  /** Centre of mass of what turns, as drawn, mm. */
  private Vector3D centre() {
    Vector3D sum = Vector3D.ZERO;
    for (String name : moving) {
      Part part = weldment.part(name);
      sum = sum.add(PartMass.kg(part), solids.get(name).middle());
    }
    return sum.scalarMultiply(1 / massKg());
  }

  private Fault fault(Clash clash) {
    return new Fault(
        String.format(
            java.util.Locale.ROOT,
            "%s meets %s at %.1f degrees, within the range of %.0f to %.0f",
            clash.movingPart(),
            clash.standingPart(),
            clash.angleDeg(),
            swing.fromDeg(),
            swing.toDeg()),
        "end the range before it with a stop, or cut back or move one of the two");
  }

  private static Fault fault(SwingResult.Grease grease) {
    return new Fault(
        "no grease gun gets to "
            + grease.feature()
            + " in any position: "
            + String.join(", ", grease.blockedBy())
            + " in the way",
        "turn the fitting to an open side, or bring the grease in by a drilled channel or a pipe");
  }
}
