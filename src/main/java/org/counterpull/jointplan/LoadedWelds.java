package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.strength.AwsFilletStress;
import org.counterpull.strength.BaseMetalShear;
import org.counterpull.strength.EnDirectional;
import org.counterpull.strength.EnShearStrength;
import org.counterpull.strength.LineWeld;
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
  private final Map<LineWeld, Stretch> stretches;
  private final Optional<WeldGroup> group;

  /** A stretch of weld: the line that it is part of, its throat and whether that is the part. */
  private record Stretch(WeldLine line, double throatMm, int faces, boolean full) {}

  private static Formula use(String name, String what, String source) {
    return new Formula(name, "how far the load uses the " + what, "1", source);
  }

  /**
   * The welds.
   *
   * @param lines where they run
   * @param stitches empty for continuous welds
   * @param throatOf throat at a line, mm
   * @param full true where the throat is the whole part
   */
  LoadedWelds(
      List<WeldLine> lines,
      Optional<Intermittent> stitches,
      ToDoubleFunction<WeldLine> throatOf,
      boolean full,
      LoadStrength strength) {
    // A groove as deep as the part runs out on the part's own ends: nothing is taken off there.
    this(
        lines,
        throatOf,
        (line, throat) -> WeldSlices.counted(line.path(), stitches, full ? 0 : throat),
        full,
        strength);
  }

  private LoadedWelds(
      List<WeldLine> lines,
      ToDoubleFunction<WeldLine> throatOf,
      BiFunction<WeldLine, Double, List<LineWeld>> counted,
      boolean full,
      LoadStrength strength) {
    this.strength = strength;
    this.stretches = new IdentityHashMap<>();
    List<LineWeld> welds = new ArrayList<>();
    for (WeldLine line : lines) {
      double throat = throatOf.applyAsDouble(line);
      int faces = faces(line, lines);
      for (LineWeld weld : counted.apply(line, throat)) {
        welds.add(weld);
        stretches.put(weld, new Stretch(line, full ? throat / faces : throat, faces, full));
      }
    }
    this.group = welds.isEmpty() ? Optional.empty() : Optional.of(new WeldGroup(welds));
  }

  /** The same with every line over its whole length, where none is long enough to count. */
  static LoadedWelds uncounted(
      List<WeldLine> lines, ToDoubleFunction<WeldLine> throatOf, LoadStrength strength) {
    return new LoadedWelds(
        lines, throatOf, (line, throat) -> WeldSlices.whole(line.path()), false, strength);
  }

  /** Both sides of one wall are welded: it carries what both bring. */
  private static int faces(WeldLine line, List<WeldLine> lines) {
    return lines.stream().anyMatch(other -> other != line && isBehind(line, other)) ? 2 : 1;
  }

  private static boolean isBehind(WeldLine line, WeldLine other) {
    LinePath path = line.path();
    double middle = path.lengthMm() / 2;
    Vector3D along = path.tangent(middle);
    Vector3D between = other.path().at(other.path().lengthMm() / 2).subtract(path.at(middle));
    double beside = between.crossProduct(along).getNorm();
    boolean parallel =
        Math.abs(along.dotProduct(other.path().tangent(other.path().lengthMm() / 2))) > 0.99;
    return parallel
        && beside < 1.5 * line.firstWallMm() + 2
        && Math.abs(between.dotProduct(along)) < middle;
  }

  /** Empty where no stretch is long enough to count. */
  Optional<WeldGroup> group() {
    return group;
  }

  /** What a force does; the group must not be empty. */
  LoadCheck.Way way(String direction, Vector3D forceN, Vector3D at) {
    List<StationForce> forces = group.orElseThrow().forces(forceN, at);
    double simplified = most(forces, this::simplified);
    double allowable = most(forces, this::allowable);
    double beside = most(forces, this::beside);
    return new LoadCheck.Way(
        direction,
        WorstLineForce.of(forces),
        SIMPLIFIED.result(simplified),
        directional(forces),
        ALLOWABLE.result(allowable),
        BESIDE.result(beside));
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
    return LOAD_FACTOR * force.sizeNPerMm() / (stretch.throatMm * strengthMPa);
  }

  private double allowable(StationForce force) {
    double throat = stretches.get(force.weld()).throatMm;
    return force.sizeNPerMm() / (throat * AwsFilletStress.mPa(AwsFilletStress.E70_MPA, 0));
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
    return EnDirectional.utilisation(stress, strength.tensileMPa(), strength.betaW());
  }
}
