package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.SkewThroat;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.strength.EffectiveLength;
import org.counterpull.strength.WeldGroup;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Weldment;

/** A joint with a load in the file: how far its welds are used, and what size would carry it. */
final class LoadedJoint {
  private static final Formula USE =
      new Formula(
          "load-utilisation",
          "how far the load uses the joint, the highest of all rules and directions",
          "1",
          "the highest of load-use-simplified, load-use-allowable and load-use-base-metal");
  private static final Formula LEG =
      new Formula(
          "leg-for-load",
          "leg that carries the load",
          "mm",
          "derived: least half millimetre that holds");
  private static final Formula THROAT =
      new Formula(
          "throat-for-load",
          "throat that carries the load",
          "mm",
          "derived: least half millimetre that holds");
  private static final Formula STAND_OFF =
      new Formula(
          "stand-off-for-load",
          "distance from the weld at which the load uses it up",
          "mm",
          "derived: bisection to 1 mm, 2 m at most");

  private static final double STEP_MM = 0.5;
  private static final double NO_THROAT_MM = 0.01;
  private static final double LARGEST_MM = 30;
  private static final double FURTHEST_MM = 2000;

  private final Joint joint;
  private final List<WeldLine> lines;
  private final LoadStrength strength;
  private final LoadPoint point;
  private final double loadN;
  private final boolean lap;

  private LoadedJoint(
      Joint joint,
      List<WeldLine> lines,
      LoadStrength strength,
      LoadPoint point,
      double loadN,
      boolean lap) {
    this.lap = lap;
    this.joint = joint;
    this.lines = List.copyOf(lines);
    this.strength = strength;
    this.point = point;
    this.loadN = loadN;
  }

  /** Empty where the file gives no load, or a material of which no strength is known here. */
  static Optional<LoadedJoint> of(
      Weldment weldment, Joint joint, List<WeldLine> lines, boolean lap) {
    if (joint.loadN().isEmpty() || joint.loadN().get() <= 0 || lines.isEmpty()) {
      return Optional.empty();
    }
    return LoadStrength.of(weldment.part(joint.first()), weldment.part(joint.second()))
        .map(
            strength ->
                new LoadedJoint(
                    joint,
                    lines,
                    strength,
                    LoadPoint.of(weldment, joint, lines),
                    joint.loadN().get(),
                    lap));
  }

  /** Least leg in half millimetres that carries the load; empty where 30 mm do not. */
  OptionalDouble leastLegMm() {
    return least(leg -> line -> throatMm(leg, line));
  }

  private OptionalDouble leastThroatMm() {
    return least(throat -> line -> throat);
  }

  private OptionalDouble least(DoubleFunction<ToDoubleFunction<WeldLine>> throatOfSize) {
    for (double size = 2 * STEP_MM; size <= LARGEST_MM; size += STEP_MM) {
      LoadedWelds welds = welds(throatOfSize.apply(size), false);
      if (welds.counted().isPresent() && worst(ways(welds, place(welds))).utilisation() <= 1) {
        return OptionalDouble.of(size);
      }
    }
    return OptionalDouble.empty();
  }

  /** A corner too narrow to count still gets a trace of throat, so that its use is a number. */
  private static double throatMm(double legMm, WeldLine line) {
    return Math.max(NO_THROAT_MM, SkewThroat.of(legMm, line.dihedralDeg()).value());
  }

  private LoadedWelds welds(ToDoubleFunction<WeldLine> throatOf, boolean full) {
    return new LoadedWelds(lines, joint.intermittent(), throatOf, full, lap, strength);
  }

  /**
   * The check of a size.
   *
   * @param size leg or throat
   * @param full true for a groove as deep as the part
   * @param leastLegMm by thickness, for the remark on oversize
   */
  LoadCheck check(WeldSize size, boolean full, double leastLegMm) {
    ToDoubleFunction<WeldLine> throatOf =
        size.leg().isPresent()
            ? line -> throatMm(size.leg().get().value(), line)
            : line -> size.throat().value();
    LoadedWelds welds = welds(throatOf, full);
    boolean counts = welds.counted().isPresent();
    Vector3D at = place(welds);
    List<LoadCheck.Way> ways = ways(welds, at);
    LoadCheck.Way worst = worst(ways);
    Optional<Computed> leastLeg =
        size.leg().isEmpty() ? Optional.empty() : computed(LEG, leastLegMm());
    Optional<Computed> leastThroat =
        full
            ? Optional.empty()
            : leastLeg
                .map(leg -> THROAT.result(throatMm(leg.value(), lines.get(0))))
                .or(
                    () ->
                        size.leg().isPresent()
                            ? Optional.empty()
                            : computed(THROAT, leastThroatMm()));
    boolean bends = !heldEverywhere(welds.group(), at);
    Optional<Computed> standOff = point.at().isPresent() ? Optional.empty() : standOff(welds);
    LoadWords words = new LoadWords(size, worst, leastLeg, leastThroat, leastLegMm, full);
    List<String> remarks = new ArrayList<>(strength.remarks());
    remarks.addAll(SkewWords.of(lines));
    remarks.addAll(words.remarks(point, standOff, lines));
    return new LoadCheck(
        loadN,
        point.words(),
        USE.result(worst.utilisation()),
        words.governs(),
        ways,
        EffectiveLength.EN.result(welds.counted().map(WeldGroup::lengthMm).orElse(0.0)),
        leastLeg,
        leastThroat,
        standOff,
        remarks,
        words.shortfall(loadN, counts, bends),
        words.remedy(counts, bends));
  }

  private static Optional<Computed> computed(Formula formula, OptionalDouble value) {
    return value.isPresent() ? Optional.of(formula.result(value.getAsDouble())) : Optional.empty();
  }

  private Vector3D place(LoadedWelds welds) {
    return point.at().orElseGet(() -> welds.group().centroid());
  }

  /** A direction that the group can't hold is worked through its middle and said apart. */
  private List<LoadCheck.Way> ways(LoadedWelds welds, Vector3D at) {
    WeldGroup group = welds.group();
    return point.directions().stream()
        .map(
            d -> {
              Vector3D force = d.unit().scalarMultiply(loadN);
              return welds.way(d.words(), force, group.holds(force, at) ? at : group.centroid());
            })
        .toList();
  }

  private static LoadCheck.Way worst(List<LoadCheck.Way> ways) {
    return ways.stream().max(Comparator.comparingDouble(LoadCheck.Way::utilisation)).orElseThrow();
  }

  private boolean heldEverywhere(WeldGroup group, Vector3D at) {
    return point.directions().stream()
        .allMatch(d -> group.holds(d.unit().scalarMultiply(loadN), at));
  }

  private Optional<Computed> standOff(LoadedWelds welds) {
    double low = 0;
    double high = FURTHEST_MM;
    if (holdsAt(welds, high)) {
      return Optional.of(STAND_OFF.result(high));
    }
    while (high - low > 1) {
      double middle = (low + high) / 2;
      if (holdsAt(welds, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Optional.of(STAND_OFF.result(low));
  }

  private boolean holdsAt(LoadedWelds welds, double standOffMm) {
    WeldGroup group = welds.group();
    Vector3D at = group.centroid().add(point.out().scalarMultiply(standOffMm));
    return heldEverywhere(group, at) && worst(ways(welds, at)).utilisation() <= 1;
  }
}
