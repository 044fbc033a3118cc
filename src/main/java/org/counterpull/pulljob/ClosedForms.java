package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pulljob.Amounts.Basis;
import org.counterpull.pulljob.Amounts.OfWall;
import org.counterpull.pulljob.PulledRun.Kind;
import org.counterpull.shrinkage.ButtPass;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.HeatShare;
import org.counterpull.shrinkage.LayeredShrinkage;
import org.counterpull.shrinkage.MultiPassAngle;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonForce;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMetal;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.Weldment;

/**
 * How much each run wants to shrink, by the published closed forms, with the limits that narrow
 * walls set to the force along the run.
 *
 * <p>Force along: the free one of {@link TendonForce}, shared between the walls as the heat is. A
 * band that yields must be held by the rest of the section, so it is at most the yield stress times
 * half the part's section, and times the wall's own (derived). Runs that lie in each other's
 * yielded band share it: the second adds {@link TendonForce#OVERLAP_HIGH} of its own, which is
 * divided evenly so that it doesn't depend on the order.
 */
final class ClosedForms {
  /** Contraction of a fillet over its leg (derived; see FilletLean). */
  private static final double CLOSING_PER_LEG = 0.010;

  /** Share of a gap under the weld that shrinks (Spraragen and Ettinger, from memory). */
  private static final double CLOSING_PER_GAP = 0.05;

  /**
   * Centroid of the band that yields behind an edge, over its fully yielded width: 1 / (2 ln 2).
   */
  private static final double BAND_CENTROID = 0.7213;

  /** Given forces act on the weld line. */
  private static final double ON_THE_LINE = -1;

  private static final double LATER_PASS_KAPPA = 0.5;
  private static final double WEAKEST_YIELD_MPA = 235;
  private static final double LONG_IN_THICKNESSES = 10;

  private final Weldment weldment;
  private final List<PulledRun> runs;

  ClosedForms(Weldment weldment, List<PulledRun> runs) {
    this.weldment = weldment;
    this.runs = runs;
  }

  Amounts of(PulledRun run) {
    if (run.given().isPresent()) {
      return given(run, run.given().get());
    }
    List<OfWall> walls = new ArrayList<>();
    List<String> beyond = new ArrayList<>();
    for (int i = 0; i < run.walls().size(); i++) {
      walls.add(wall(run, i, beyond));
    }
    boolean closes = run.kind() == Kind.FILLET || run.kind() == Kind.FLARE;
    double closing = closes ? CLOSING_PER_LEG * run.legMm() + CLOSING_PER_GAP * run.gapMm() : 0;
    return new Amounts(walls, closing, Basis.CLOSED_FORMS, beyond);
  }

  private Amounts given(PulledRun run, RunGiven.Shrinkage shrinkage) {
    List<OfWall> walls = new ArrayList<>();
    boolean joined = run.kind() == Kind.BUTT || run.kind() == Kind.CORNER;
    for (int i = 0; i < run.walls().size(); i++) {
      boolean takes = run.walls().get(i).goesOn();
      double share = joined ? 1.0 / run.walls().size() : takes ? 1 : 0;
      walls.add(
          new OfWall(
              share * shrinkage.acrossMm(),
              share * shrinkage.angleRad(),
              heatShare(run, i) * shrinkage.alongN(),
              ON_THE_LINE));
    }
    return new Amounts(walls, 0, Basis.GIVEN, List.of());
  }

  private OfWall wall(PulledRun run, int i, List<String> beyond) {
    Wall wall = run.walls().get(i);
    ShrinkageMaterial material = material(wall);
    double share = heatShare(run, i);
    double along = alongN(run, wall, share, material, beyond);
    double depth = depthMm(wall, share * run.netJPerMm(), material);
    return switch (run.kind()) {
      case BUTT -> butt(run, wall, material, along, depth);
      case CORNER, BEAD -> transverse(run, wall, share, material, along, depth, beyond);
      case FILLET, FLARE ->
          wall.goesOn()
              ? transverse(run, wall, share, material, along, depth, beyond)
              : new OfWall(0, 0, along, depth);
    };
  }

  /** Half of a butt weld's shrinkage and angle belongs to each wall. */
  private static OfWall butt(
      PulledRun run, Wall wall, ShrinkageMaterial material, double along, double depth) {
    List<ButtPass> passes = new ArrayList<>();
    for (int i = 0; i < run.passesJPerMm().size(); i++) {
      double heat = run.passesJPerMm().get(i);
      if (heat > 0) {
        passes.add(new ButtPass(heat, run.depthsMm().get(i), 1));
      }
    }
    if (passes.isEmpty()) {
      return new OfWall(0, 0, along, depth);
    }
    return new OfWall(
        LayeredShrinkage.of(passes, material).value() / 2,
        MultiPassAngle.of(passes).value() / 2,
        along,
        depth);
  }

  private static OfWall transverse(
      PulledRun run,
      Wall wall,
      double share,
      ShrinkageMaterial material,
      double along,
      double depth,
      List<String> beyond) {
    double across = 0;
    double angle = 0;
    double h = wall.thicknessMm();
    for (int pass = 0; pass < run.passesJPerMm().size(); pass++) {
      double heat = share * run.passesJPerMm().get(pass);
      double x = FreeShrinkage.heatParameterJPerMm3(heat, h);
      double kappa = pass == 0 ? FreeShrinkage.kappa(x) : LATER_PASS_KAPPA;
      across += FreeShrinkage.shrinkageMm(kappa, heat, h, material);
      angle += FreeAngle.of(heat, h).value();
      FreeAngle.of(heat, h).warnings().forEach(w -> beyond.add(run.name() + ": " + w));
    }
    if (run.weldedMm() < LONG_IN_THICKNESSES * h) {
      beyond.add(
          String.format(
              Locale.ROOT,
              "%s: a run of %.0f mm is short for a wall of %.1f mm in %s",
              run.name(),
              run.weldedMm(),
              h,
              wall.part()));
    }
    return new OfWall(across, angle, along, depth);
  }

  private double heatShare(PulledRun run, int i) {
    if (run.walls().size() == 1) {
      return 1;
    }
    Wall own = run.walls().get(i);
    Wall other = run.walls().get(1 - i);
    return HeatShare.share(
        own.halfPlates(), own.thicknessMm(), other.halfPlates(), other.thicknessMm());
  }

  private double alongN(
      PulledRun run, Wall wall, double share, ShrinkageMaterial material, List<String> beyond) {
    double heat = share * run.netJPerMm();
    double free = TendonForce.forceN(heat, material);
    int together = together(run, wall, material);
    double factor = (1 + TendonForce.OVERLAP_HIGH * (together - 1)) / together;
    double yield = yieldMPa(weldment.part(wall.part()));
    double own = yield * wall.thicknessMm() * wall.roomMm();
    double most = Math.min(own, yield * areaMm2(wall) / 2) / together;
    if (free * factor > most) {
      beyond.add(
          String.format(
              Locale.ROOT,
              "%s: %s is too narrow for the free force along of %.0f kN; it holds %.0f kN",
              run.name(),
              wall.part(),
              free * factor / 1e3,
              most / 1e3));
    }
    return Math.min(free * factor, most);
  }

  /**
   * Where the force along has its middle. In a wall that goes on under the weld: below its face, at
   * the centroid of the half disc that yields, at most in the wall's middle. In a wall that ends at
   * the weld: behind its edge, at the centroid of the band that yields, at most a quarter of its
   * depth (the band is held by the other half).
   */
  private double depthMm(Wall wall, double heat, ShrinkageMaterial material) {
    double yield = yieldMPa(weldment.part(wall.part()));
    if (!wall.goesOn()) {
      double band = 2 * TendonForce.yieldedBandMm(heat, wall.thicknessMm(), yield, material);
      return Math.min(wall.roomMm() / 4, BAND_CENTROID * band);
    }
    double riseK = 2 * yield / (material.elasticModulusMPa() * material.expansionPerK());
    double radius =
        Math.sqrt(2 * heat / (Math.PI * Math.E * material.heatCapacityJPerMm3K() * riseK));
    return Math.min(wall.thicknessMm() / 2, 4 / (3 * Math.PI) * radius);
  }

  private double areaMm2(Wall wall) {
    Part part = weldment.part(wall.part());
    Stock stock = part.stock();
    return part.outline().isEmpty() ? stock.areaMm2() : wall.thicknessMm() * wall.roomMm();
  }

  /** How many runs lie in one yielded band of a part, this one counted. */
  private int together(PulledRun run, Wall wall, ShrinkageMaterial material) {
    double yield = yieldMPa(weldment.part(wall.part()));
    double heat = Math.max(1, run.netJPerMm() / run.walls().size());
    double band = TendonForce.yieldedBandMm(heat, wall.thicknessMm(), yield, material);
    int count = 0;
    for (PulledRun other : runs) {
      boolean same = other.walls().stream().anyMatch(w -> w.part().equals(wall.part()));
      if (same && alongside(run, other) && apart(run, other) < band) {
        count++;
      }
    }
    return Math.max(1, count);
  }

  /** True for runs side by side: about parallel, and beside each other for a fifth of a length. */
  private static boolean alongside(PulledRun run, PulledRun other) {
    double middle = run.path().lengthMm() / 2;
    double others = other.path().lengthMm() / 2;
    Vector3D along = run.path().tangent(middle);
    if (Math.abs(along.dotProduct(other.path().tangent(others))) < 0.9) {
      return false;
    }
    Vector3D from = run.path().at(middle);
    double a = other.path().start().subtract(from).dotProduct(along);
    double b = other.path().end().subtract(from).dotProduct(along);
    double overlap = Math.min(middle, Math.max(a, b)) - Math.max(-middle, Math.min(a, b));
    return run == other || overlap > 0.4 * Math.min(middle, others);
  }

  private static double apart(PulledRun run, PulledRun other) {
    double least = Double.MAX_VALUE;
    for (int i = 0; i <= 8; i++) {
      for (int k = 0; k <= 8; k++) {
        double distance =
            run.path()
                .at(run.path().lengthMm() * i / 8)
                .distance(other.path().at(other.path().lengthMm() * k / 8));
        least = Math.min(least, distance);
      }
    }
    return least;
  }

  private ShrinkageMaterial material(Wall wall) {
    return materialOf(weldment.part(wall.part()));
  }

  static ShrinkageMaterial materialOf(Part part) {
    return switch (PartMetal.of(part)) {
      case CARBON_STEEL -> ShrinkageMaterial.CARBON_STEEL;
      case STAINLESS_STEEL -> ShrinkageMaterial.named("austenitic stainless steel");
      case ALUMINIUM_5XXX, ALUMINIUM_6XXX -> ShrinkageMaterial.named("aluminium-magnesium");
    };
  }

  static double yieldMPa(Part part) {
    return Grades.find(part.steel().designation())
        .map(Grade::yieldMPa)
        .filter(OptionalDouble::isPresent)
        .map(OptionalDouble::getAsDouble)
        .orElse(WEAKEST_YIELD_MPA);
  }
}
