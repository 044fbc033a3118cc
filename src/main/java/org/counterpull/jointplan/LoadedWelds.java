package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.FilletThroat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.strength.AwsFilletStress;
import org.counterpull.strength.BaseMetalShear;
import org.counterpull.strength.EffectiveLength;
import org.counterpull.strength.EnDirectional;
import org.counterpull.strength.EnShearStrength;
import org.counterpull.strength.LineWeld;
import org.counterpull.strength.LongLap;
import org.counterpull.strength.StationForce;
import org.counterpull.strength.ThroatStress;
import org.counterpull.strength.WeldGroup;
import org.counterpull.strength.WorstLineForce;
import org.counterpull.weldment.Joint.Intermittent;

/** The welds of a joint in one size, ready to be loaded. */
final class LoadedWelds {
  /** Partial factor that turns a working load into a design load: EN 1990, variable action. */
  static final double LOAD_FACTOR = 1.5;

  static final Formula SIMPLIFIED =
      use(
          "load-use-simplified",
          "throat, simplified",
          "EN 1993-1-8:2005, 4.5.3.3; load x 1.5, EN 1990");
  static final Formula DIRECTIONAL =
      use(
          "load-use-directional",
          "throat, directional",
          "EN 1993-1-8:2005, 4.5.3.2; load x 1.5, EN 1990");
  static final Formula ALLOWABLE =
      use("load-use-allowable", "throat, allowable", "from memory: AWS D1.1, 0.30 F_EXX, class 70");
  static final Formula BESIDE =
      use("load-use-base-metal", "metal beside the weld", "from memory: AISC 360, J4.2");

  private final LoadStrength strength;
  private final Map<LineWeld, Stretch> stretches = new IdentityHashMap<>();
  private final WeldGroup whole;
  private final Optional<WeldGroup> counted;
  private final Optional<WeldGroup> ofFourLegs;
  private final Map<LineWeld, Double> quarters = new IdentityHashMap<>();

  /** A stretch of weld: the line that it is part of, its throat and whether that is the part. */
  private record Stretch(WeldLine line, double throatMm, int faces, boolean full, boolean lap) {
    /** Reduction of a long lap by EN 1993-1-8 4.11. */
    double longByEn() {
      return lap && !full ? LongLap.en(line.path().lengthMm(), throatMm).value() : 1;
    }

    /** Reduction of a long end-loaded weld by AISC 360 J2.2b. */
    double longByAisc() {
      double leg = throatMm / FilletThroat.perLeg(90);
      return lap && !full ? LongLap.aisc(line.path().lengthMm(), leg).value() : 1;
    }
  }

  private static Formula use(String name, String what, String source) {
    return new Formula(name, "how far the load uses the " + what, "1", source);
  }

  /**
   * The welds.
   *
   * @param lines where they run
   * @param stitches empty for continuous welds
   * @param throatOf throat at a line, mm
   * @param full true where the throat is the whole part: it runs out on the part's own ends, and
   *     nothing is taken off there
   * @param lap true for a lap, whose long welds carry less in their middle
   */
  LoadedWelds(
      List<WeldLine> lines,
      Optional<Intermittent> stitches,
      ToDoubleFunction<WeldLine> throatOf,
      boolean full,
      boolean lap,
      LoadStrength strength) {
    this.strength = strength;
    List<LineWeld> counting = new ArrayList<>();
    List<LineWeld> all = new ArrayList<>();
    List<LineWeld> longOnes = new ArrayList<>();
    for (WeldLine line : lines) {
      double throat = throatOf.applyAsDouble(line);
      boolean plug = line.shape() == WeldLine.Shape.PLUG;
      int faces = BothFaces.faces(line, lines);
      Stretch stretch =
          new Stretch(line, full ? throat / faces : throat, faces, full, lap && !plug);
      List<LineWeld> here = WeldSlices.whole(line.path(), stitches);
      here.forEach(weld -> stretches.put(weld, stretch));
      all.addAll(here);
      double weldMm =
          stitches
              .map(s -> Math.min(s.lengthMm(), line.path().lengthMm()))
              .orElse(line.path().lengthMm());
      here.forEach(weld -> quarters.put(weld, full || plug ? 1 : quarter(weldMm, throat)));
      List<LineWeld> counted =
          full || plug ? here : WeldSlices.counted(line.path(), stitches, throat);
      counted.forEach(weld -> stretches.put(weld, stretch));
      counting.addAll(counted);
      double leg = throat / FilletThroat.perLeg(90);
      List<LineWeld> four = full || plug ? here : WeldSlices.ofFourLegs(line.path(), stitches, leg);
      four.forEach(weld -> stretches.put(weld, stretch));
      longOnes.addAll(four);
    }
    this.whole = new WeldGroup(all);
    this.ofFourLegs = longOnes.isEmpty() ? Optional.empty() : Optional.of(new WeldGroup(longOnes));
    this.counted = counting.isEmpty() ? Optional.empty() : Optional.of(new WeldGroup(counting));
  }

  /** Share of its leg that a short weld counts with by AISC 360 J2.2b. */
  private static double quarter(double lengthMm, double throatMm) {
    double leg = throatMm / FilletThroat.perLeg(90);
    return EffectiveLength.aiscLeg(lengthMm, leg).value() / leg;
  }

  /** What counts by EN 1993-1-8; empty where no stretch is long enough. */
  Optional<WeldGroup> counted() {
    return counted;
  }

  /** What counts, or all of the welds where nothing does. */
  WeldGroup group() {
    return counted.orElse(whole);
  }

  /**
   * What a force does. AWS and AISC count the whole length of welds of four legs and more, and of
   * shorter ones with a quarter of their length for a leg; EN 1993-1-8 what is left of the length:
   * each rule is worked with its own. Short welds that would be overloaded first may as well be
   * left out: the better of the two ways holds.
   */
  LoadCheck.Way way(String direction, Vector3D forceN, Vector3D at) {
    List<StationForce> forces = group().forces(forceN, at);
    WeldGroup american = ofFourLegs.orElse(whole);
    List<StationForce> onWhole =
        american.forces(forceN, american.holds(forceN, at) ? at : american.centroid());
    return new LoadCheck.Way(
        direction,
        WorstLineForce.of(forces),
        SIMPLIFIED.result(most(forces, this::simplified)),
        directional(forces),
        ALLOWABLE.result(
            ofFourLegs.isPresent()
                ? Math.min(most(onWhole, this::allowable), shortOnesToo(forceN, at))
                : shortOnesToo(forceN, at)),
        BESIDE.result(most(onWhole, this::beside)));
  }

  private double shortOnesToo(Vector3D forceN, Vector3D at) {
    List<StationForce> forces =
        whole.forces(forceN, whole.holds(forceN, at) ? at : whole.centroid());
    return most(forces, force -> allowable(force) / quarters.getOrDefault(force.weld(), 1.0));
  }

  private static double most(List<StationForce> forces, ToDoubleFunction<StationForce> use) {
    return forces.stream().mapToDouble(use).max().orElseThrow();
  }

  private double simplified(StationForce force) {
    Stretch stretch = stretches.get(force.weld());
    double strengthMPa =
        stretch.full
            ? strength.yieldMPa() / Math.sqrt(3)
            : EnShearStrength.mPa(strength.tensileMPa(), strength.betaW());
    return LOAD_FACTOR * force.sizeNPerMm() / (stretch.throatMm * strengthMPa * stretch.longByEn());
  }

  private double allowable(StationForce force) {
    Stretch stretch = stretches.get(force.weld());
    double stress = AwsFilletStress.mPa(AwsFilletStress.E70_MPA, 0) * stretch.longByAisc();
    return force.sizeNPerMm() / (stretch.throatMm * stress);
  }

  private double beside(StationForce force) {
    Stretch stretch = stretches.get(force.weld());
    double wall =
        Math.min(
            stretch.line.firstWallMm() / stretch.faces,
            stretch.full
                ? stretch.line.secondWallMm() / stretch.faces
                : stretch.line.secondWallMm());
    return force.sizeNPerMm()
        / BaseMetalShear.of(strength.yieldMPa(), strength.tensileMPa(), wall).value();
  }

  private Optional<Computed> directional(List<StationForce> forces) {
    boolean plain =
        stretches.values().stream()
            .allMatch(s -> !s.full && s.line.path() instanceof LinePath.Straight);
    return plain
        ? Optional.of(DIRECTIONAL.result(most(forces, this::directional)))
        : Optional.empty();
  }

  private double directional(StationForce force) {
    Stretch stretch = stretches.get(force.weld());
    ThroatStress stress =
        ThroatStress.of(
            force.nPerMm().scalarMultiply(LOAD_FACTOR),
            force.station().along(),
            stretch.line.opening(),
            stretch.throatMm);
    return EnDirectional.utilisation(stress, strength.tensileMPa(), strength.betaW())
        / stretch.longByEn();
  }
}
