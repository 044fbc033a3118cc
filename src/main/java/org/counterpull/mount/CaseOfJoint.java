package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.LinePath;
import org.counterpull.fit.ToleranceClass;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.stock.RoundTube;
import org.counterpull.strength.CorrelationFactor;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Turns one planned joint on a tube into a case: all in the tube's own axis and angles. */
final class CaseOfJoint {
  private static final double WEAKEST_TENSILE_MPA = 360;
  private static final double WEAKEST_YIELD_MPA = 235;
  private static final double TUBE_TENSILE_MPA = 490;
  private static final double SIDE_BY_SIDE_RAD = Math.toRadians(70);
  private static final double ARM_SHARE = 0.75;
  private static final double FITS_BORE = 1.02;

  /** Weld metal of a fillet over its triangle, as joints are planned. */
  private static final double OVERFILL = 1.21;

  private final Weldment weldment;
  private final MountCases.NearJoint near;
  private final JointPlan plan;
  private final Inside inside;
  private final RoundTube stock;
  private final double middleMm;
  private final double upRad;

  CaseOfJoint(Weldment weldment, MountCases.NearJoint near, JointPlan plan, Inside inside) {
    this.weldment = weldment;
    this.near = near;
    this.plan = plan;
    this.inside = inside;
    this.stock = (RoundTube) near.tube().stock();
    List<Vector3D> middles = new ArrayList<>();
    for (RunPlan run : plan.runs()) {
      LinePath path = run.line().path();
      middles.add(local(path.at(path.lengthMm() / 2)));
    }
    this.middleMm = middles.stream().mapToDouble(Vector3D::getX).average().orElseThrow();
    Vector3D to = local(partnerMiddle());
    this.upRad = Math.atan2(to.getZ(), to.getY());
  }

  private Vector3D local(Vector3D point) {
    return near.tube().frame().into(point);
  }

  private Vector3D partnerMiddle() {
    Part partner = near.partner();
    return partner.frame().outOf(new Vector3D(partner.lengthMm() / 2, 0, 0));
  }

  MountCase mount() {
    WeldingProcess process = plan.runs().get(0).process();
    List<Seam> seams = seams();
    Partner partner = partner(seams);
    double yield = strength(near.tube(), true);
    BoredTube tube =
        new BoredTube(
            stock.outsideMm(), stock.wallMm(), -middleMm, near.tube().lengthMm() - middleMm, yield);
    double metal = plan.runs().get(0).passes().stream().mapToDouble(p -> p.area().value()).sum();
    return new MountCase(
        near.joint().name(),
        tube,
        partner,
        seams,
        Math.rint(10 * Math.sqrt(2 * metal / OVERFILL)) / 10,
        near.features().stream().map(this::sensitive).toList(),
        weldment.surroundings().ambientC(),
        process.efficiencyHigh() / process.efficiency(),
        ProcessLimits.fastestMmPerS(process),
        near.joint().loadN(),
        ARM_SHARE * partner.heightMm(),
        inside,
        assumptions(partner));
  }

  private List<Seam> seams() {
    List<Seam> seams = new ArrayList<>();
    for (RunPlan run : plan.runs()) {
      List<WeldPass> passes =
          run.passes().stream()
              .map(
                  p ->
                      new WeldPass(
                          p.netHeat().value(), p.travelMmPerS(), Math.max(1, p.area().value())))
              .toList();
      seams.add(seam(run.line().run(), run.line().path(), passes));
    }
    return seams;
  }

  private Seam seam(String name, LinePath path, List<WeldPass> passes) {
    Vector3D from = local(path.start());
    Vector3D to = local(path.end());
    if (path instanceof LinePath.Arc arc && arc.sweepRad() > Math.PI) {
      return Seams.round(name, from.getX() - middleMm, passes);
    }
    double fromRad = angle(from);
    double toRad = angle(to);
    double fromZ = from.getX() - middleMm;
    double toZ = to.getX() - middleMm;
    if (Math.abs(toZ - fromZ) > Math.abs(toRad - fromRad) * stock.outsideMm() / 2) {
      double rad = (fromRad + toRad) / 2;
      return new Seam(name, fromZ, rad, toZ, rad, passes);
    }
    double z = (fromZ + toZ) / 2;
    return new Seam(name, z, fromRad, z, toRad, passes);
  }

  private double angle(Vector3D at) {
    double rad = Math.atan2(at.getZ(), at.getY()) - upRad;
    return Math.atan2(Math.sin(rad), Math.cos(rad));
  }

  private Partner partner(List<Seam> seams) {
    Part part = near.partner();
    double tensile = Math.min(strength(part, false), strength(near.tube(), false));
    double beta = CorrelationFactor.of(part.steel().designation());
    Vector3D axis = near.tube().frame().directionOutOf(Vector3D.PLUS_I);
    Vector3D up =
        near.tube().frame().directionOutOf(new Vector3D(0, Math.cos(upRad), Math.sin(upRad)));
    if (seams.stream().anyMatch(Seam::round)) {
      return new Partner(part.name(), Partner.Kind.RING, 1, extent(part, axis), 0, tensile, beta);
    }
    double alongMm = Math.max(1, spread(seams));
    boolean lug =
        seams.stream().allMatch(s -> Math.abs(s.fromRad()) < SIDE_BY_SIDE_RAD)
            && seams.stream().filter(Seam::along).anyMatch(s -> s.fromRad() > 0.01)
            && seams.stream().filter(Seam::along).anyMatch(s -> s.fromRad() < -0.01);
    if (!lug) {
      return new Partner(
          part.name(), Partner.Kind.RAIL, alongMm, part.stock().thinnestMm(), 0, tensile, beta);
    }
    return new Partner(
        part.name(),
        Partner.Kind.LUG,
        alongMm,
        extent(part, axis.crossProduct(up)),
        extent(part, up),
        tensile,
        beta);
  }

  private static double spread(List<Seam> seams) {
    double low = seams.stream().mapToDouble(s -> Math.min(s.fromZMm(), s.toZMm())).min().orElse(0);
    double high = seams.stream().mapToDouble(s -> Math.max(s.fromZMm(), s.toZMm())).max().orElse(0);
    return high - low;
  }

  /** Size of a part along a direction. */
  private static double extent(Part part, Vector3D direction) {
    Vector3D d = part.frame().directionInto(direction);
    return Math.abs(d.getX()) * part.lengthMm()
        + Math.abs(d.getY()) * part.stock().acrossMm()
        + Math.abs(d.getZ()) * part.stock().upMm();
  }

  /** Precision tube E355 has no row among the grades: EN 10305-1, normalised, from memory. */
  private static double strength(Part part, boolean yield) {
    if (part.steel().designation().startsWith("E355")) {
      return yield ? ShopValue.of("wall stress long") : TUBE_TENSILE_MPA;
    }
    Optional<Grade> grade = Grades.find(part.steel().designation());
    return yield
        ? grade.map(g -> g.yieldMPa().orElse(WEAKEST_YIELD_MPA)).orElse(WEAKEST_YIELD_MPA)
        : grade.map(g -> g.tensileMPa().orElse(WEAKEST_TENSILE_MPA)).orElse(WEAKEST_TENSILE_MPA);
  }

  private Sensitive sensitive(Feature feature) {
    double at = feature.at().map(Vector3D::getX).orElse(near.tube().lengthMm() / 2) - middleMm;
    double half = feature.lengthMm().orElse(0.0) / 2;
    boolean whole = feature.kind() == Feature.Kind.BORE && feature.lengthMm().isEmpty();
    double low = whole ? -middleMm : at - half;
    double high = whole ? near.tube().lengthMm() - middleMm : at + half;
    double bore = stock.outsideMm() - 2 * stock.wallMm();
    boolean in =
        switch (feature.kind()) {
          case BORE, SEAL, BEARING, THREAD ->
              feature.diameterMm().map(d -> d <= bore * FITS_BORE).orElse(true);
          case COATING,
              MACHINED_FACE,
              HOLE,
              GREASE_FITTING,
              CAPTIVE_PIECE,
              VESSEL,
              ACCUMULATOR,
              GAS_STRUT ->
              false;
        };
    Optional<Double> clearance =
        feature.turnsOnMm().map(pin -> feature.diameterMm().orElse(bore) - pin).filter(c -> c > 0);
    Optional<HeatLimit> limit =
        feature.kind() == Feature.Kind.BORE && feature.limitC().isEmpty()
            ? Optional.empty()
            : HeatLimit.of(feature.kind(), feature.material(), feature.limitC());
    return new Sensitive(
        feature.name(),
        feature.kind(),
        low,
        high,
        in,
        limit,
        feature.tolerance().flatMap(ToleranceClass::parse),
        clearance,
        feature.removable());
  }

  private List<String> assumptions(Partner partner) {
    List<String> all = new ArrayList<>();
    for (RunPlan run : plan.runs()) {
      all.add(
          String.format(
              Locale.ROOT,
              "%s: %d %s, %.0f J/mm net in all",
              run.name(),
              run.passes().size(),
              run.passes().size() == 1 ? "pass" : "passes",
              run.netHeatJPerMm()));
    }
    near.joint()
        .loadN()
        .ifPresent(
            f ->
                all.add(
                    String.format(
                        Locale.ROOT,
                        "the load acts %.0f mm off the tube, along it or straight off it",
                        ARM_SHARE * partner.heightMm())));
    if (partner.kind() != Partner.Kind.LUG) {
      all.add(
          partner.name()
              + " is not laid out: the tube takes its share of the heat by the thickness of both");
    }
    all.add(inside.word());
    return all;
  }
}
