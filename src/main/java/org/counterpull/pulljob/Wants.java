package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import org.counterpull.zone.ZoneShrinkage;

/**
 * How much each run wants to shrink.
 *
 * <p>Long runs on wide walls: the published closed forms. Short runs, narrow walls, edges and tubes
 * are out of their range; there the zone rule is applied to closed-form peak temperatures with
 * mirror sources at faces and edges ({@link ZonePeaks}), or, for other metals than carbon steel,
 * the closed forms are kept and the limit that they leave is told.
 *
 * <p>A band that yields must be held by the rest of the section, so the force along is at most the
 * yield stress times half the part's section, and times the wall's own (derived). Runs that lie in
 * each other's yielded band share it: the second adds {@link TendonForce#OVERLAP_HIGH} of its own,
 * which is divided evenly so that it doesn't depend on the order.
 */
final class Wants {
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
  private static final double HOTTEST = 10;
  private static final double LENGTHWISE = 0.7;
  private static final double LEAST_HEAT = 1;

  private final Weldment weldment;
  private final List<PulledRun> runs;
  private final ZonePeaks zones = new ZonePeaks();

  Wants(Weldment weldment, List<PulledRun> runs) {
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
    double acrossFactor = measured(run, Effect.ACROSS);
    double angleFactor = measured(run, Effect.ANGLE);
    double alongFactor = measured(run, Effect.ALONG);
    walls.replaceAll(
        w ->
            new OfWall(
                acrossFactor * w.acrossMm(),
                angleFactor * w.angleRad(),
                alongFactor * w.alongN(),
                w.alongDepthMm()));
    closing *= measured(run, Effect.LEAN);
    boolean zone = beyond.stream().anyMatch(words -> words.endsWith(": zone rule"));
    return new Amounts(walls, closing, zone ? Basis.ZONE : Basis.CLOSED_FORMS, beyond);
  }

  /** The shop's own factor; 1 where it measured nothing. */
  private double measured(PulledRun run, Effect effect) {
    boolean covered =
        weldment.calibrations().stream()
            .anyMatch(c -> c.covers(run.process(), effect.calibrated()));
    return covered ? weldment.factor(run.process(), effect.calibrated()).median() : 1;
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
    boolean shrinksAcross =
        switch (run.kind()) {
          case BUTT -> false;
          case CORNER, BEAD -> true;
          case FILLET, FLARE -> wall.goesOn();
        };
    Optional<String> outside = outside(run, wall, share * run.netJPerMm(), material);
    boolean zone = outside.isPresent() && material.equals(ShrinkageMaterial.CARBON_STEEL);
    if (outside.isPresent()) {
      beyond.add(run.name() + ": " + outside.get() + (zone ? ": zone rule" : ""));
    }
    if (zone && run.netJPerMm() > 0) {
      return zoned(run, wall, share, material, shrinksAcross);
    }
    double along =
        alongN(run, wall, TendonForce.forceN(share * run.netJPerMm(), material), material);
    double depth = depthMm(wall, share * run.netJPerMm(), material);
    if (run.kind() == Kind.BUTT) {
      return butt(run, material, along, depth);
    }
    return shrinksAcross
        ? transverse(run, wall, share, material, along, depth)
        : new OfWall(0, 0, along, depth);
  }

  /** In which way a wall is outside the range of the closed forms. */
  private Optional<String> outside(
      PulledRun run, Wall wall, double heat, ShrinkageMaterial material) {
    double h = wall.thicknessMm();
    double yield = yieldMPa(weldment.part(wall.part()));
    double band = 2 * TendonForce.yieldedBandMm(heat, h, yield, material);
    double x = FreeShrinkage.heatParameterJPerMm3(heat, h);
    if (run.weldedMm() < LONG_IN_THICKNESSES * h) {
      return told("short for %s, %.1f mm thick", wall.part(), h);
    }
    if (!wall.goesOn() && run.kind() != Kind.BUTT) {
      return told("at the edge of %s", wall.part());
    }
    boolean narrow =
        wall.aroundMm() > 0
            ? wall.aroundMm() < 2 * band
            : wall.aheadMm() < band || wall.goesOn() && wall.behindMm() < band;
    if (narrow) {
      return told("%s is narrower than the %.0f mm that yield to each side", wall.part(), band);
    }
    return x > HOTTEST ? told("hot for %s: %.1f J/mm3", wall.part(), x) : Optional.empty();
  }

  private static Optional<String> told(String format, Object... values) {
    return Optional.of(String.format(Locale.ROOT, format, values));
  }

  private OfWall zoned(
      PulledRun run, Wall wall, double share, ShrinkageMaterial material, boolean shrinksAcross) {
    ZoneShrinkage all = zone(run, wall, share * run.netJPerMm(), material);
    double across = 0;
    double angle = 0;
    for (int pass = 0; pass < run.passesJPerMm().size(); pass++) {
      ZoneShrinkage one = zone(run, wall, share * run.passesJPerMm().get(pass), material);
      across += (pass == 0 ? 1 : LATER_PASS_KAPPA) * one.across().value();
      angle += zoneAngle(one, share * run.passesJPerMm().get(pass), wall.thicknessMm());
    }
    double along = alongN(run, wall, all.tendon().value(), material);
    double depth = wall.goesOn() ? -all.tendonBMm() : all.tendonNMm();
    if (run.kind() == Kind.BUTT) {
      return butt(run, material, along, Math.max(0, depth));
    }
    return shrinksAcross
        ? new OfWall(across, angle, along, Math.max(0, depth))
        : new OfWall(0, 0, along, Math.max(0, depth));
  }

  /** Where the zone has gone through the wall its angle is too small: the closed form holds on. */
  private static double zoneAngle(ZoneShrinkage zone, double heat, double thicknessMm) {
    return zone.angle().inRange()
        ? zone.angle().value()
        : Math.max(zone.angle().value(), FreeAngle.of(heat, thicknessMm).value());
  }

  private ZoneShrinkage zone(PulledRun run, Wall wall, double heat, ShrinkageMaterial material) {
    return zones.of(
        new ZonePeaks.Case(
            ZonePeaks.Sizes.of(wall),
            Math.rint(Math.max(LEAST_HEAT, heat)),
            weldment.surroundings().ambientC(),
            Math.rint(holdingMm2(run, wall)),
            yieldMPa(weldment.part(wall.part()))),
        material);
  }

  /** The section across the run that holds what is hot: the part's own, or that of a wide wall. */
  private double holdingMm2(PulledRun run, Wall wall) {
    Vector3D way = run.path().tangent(run.path().lengthMm() / 2);
    boolean lengthwise =
        Math.abs(weldment.part(wall.part()).frame().x().dotProduct(way)) > LENGTHWISE;
    double own = wall.thicknessMm() * wall.roomMm();
    return lengthwise ? Math.max(own, areaMm2(wall)) : own;
  }

  /**
   * Half of a butt weld's shrinkage and angle belongs to each wall. Passes of a run that comes
   * later in the same groove are later passes.
   */
  private OfWall butt(PulledRun run, ShrinkageMaterial material, double along, double depth) {
    List<ButtPass> before = new ArrayList<>();
    for (PulledRun other : runs.subList(0, Math.max(0, runs.indexOf(run)))) {
      if (Grooves.share(run, other)) {
        before.addAll(passes(other));
      }
    }
    List<ButtPass> own = passes(run);
    if (own.isEmpty()) {
      return new OfWall(0, 0, along, depth);
    }
    List<ButtPass> all = new ArrayList<>(before);
    all.addAll(own);
    double across = LayeredShrinkage.of(all, material).value();
    if (!before.isEmpty()) {
      across -= LayeredShrinkage.of(before, material).value();
    }
    return new OfWall(across / 2, MultiPassAngle.of(own).value() / 2, along, depth);
  }

  private static List<ButtPass> passes(PulledRun run) {
    List<ButtPass> passes = new ArrayList<>();
    for (int i = 0; i < run.passesJPerMm().size(); i++) {
      double heat = run.passesJPerMm().get(i);
      if (heat > 0) {
        passes.add(new ButtPass(heat, run.depthsMm().get(i), 1));
      }
    }
    return passes;
  }

  private static OfWall transverse(
      PulledRun run,
      Wall wall,
      double share,
      ShrinkageMaterial material,
      double along,
      double depth) {
    double across = 0;
    double angle = 0;
    double h = wall.thicknessMm();
    for (int pass = 0; pass < run.passesJPerMm().size(); pass++) {
      double heat = share * run.passesJPerMm().get(pass);
      double x = FreeShrinkage.heatParameterJPerMm3(heat, h);
      double kappa = pass == 0 ? FreeShrinkage.kappa(x) : LATER_PASS_KAPPA;
      across += FreeShrinkage.shrinkageMm(kappa, heat, h, material);
      angle += FreeAngle.of(heat, h).value();
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

  /** The force of one run on a wall: shared with runs beside it, and no more than it holds. */
  private double alongN(PulledRun run, Wall wall, double freeN, ShrinkageMaterial material) {
    int together = together(run, wall, material);
    double factor = (1 + TendonForce.OVERLAP_HIGH * (together - 1)) / together;
    double yield = yieldMPa(weldment.part(wall.part()));
    double own = yield * wall.thicknessMm() * wall.roomMm();
    double most = Math.min(own, yield * areaMm2(wall) / 2) / together;
    return Math.min(freeN * factor, most);
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
