package org.counterpull.hinge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.linkage.CylinderForce;
import org.counterpull.plan.PinLoad;
import org.counterpull.plan.PinLoad.Use;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.strength.PinnedJoint;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;

/** What a pin through lugs carries: the push of a cylinder, or what the file says of the lugs. */
final class LoadedPin {
  /** EN 1990, variable action. */
  private static final double LOAD_FACTOR = 1.5;

  /** C45 as rolled, from memory. */
  private static final double PIN_TENSILE_MPA = 600;

  private static final double PIN_YIELD_MPA = 340;

  /** S235, where the grade's strength is not listed. */
  private static final double WEAKEST_YIELD_MPA = 235;

  /** Side play of an eye between two lugs, and of a lug between two ears, mm. */
  private static final double PLAY_MM = 0.5;

  private static final double EAR_SHARE = 0.6;
  private static final double LEAST_EAR_MM = 6;
  private static final double AT_PIN_MM = 15;

  private final Weldment weldment;
  private final List<JointPlan> joints;
  private final Row row;

  LoadedPin(Weldment weldment, List<JointPlan> joints, Row row) {
    this.weldment = weldment;
    this.joints = joints;
    this.row = row;
  }

  /** A load on the pin with what brings it. */
  private record Working(String by, double forceN) {}

  Optional<PinLoad> of() {
    boolean lugs = !row.hinge() && row.holes().size() <= 2;
    return lugs ? working().flatMap(this::carried) : Optional.empty();
  }

  private Optional<Working> working() {
    double ofFile = weldLoadN();
    Optional<Working> cylinder =
        weldment.swings().stream()
            .flatMap(swing -> swing.cylinder().stream().map(c -> push(swing.name(), c)))
            .flatMap(Optional::stream)
            .findFirst();
    return cylinder.or(
        () -> ofFile > 0 ? Optional.of(new Working("load in the file", ofFile)) : Optional.empty());
  }

  private Optional<Working> push(String swing, Swing.Cylinder cylinder) {
    return at(cylinder.fixedAt()) || at(cylinder.movingAt())
        ? Optional.of(
            new Working(
                "push of the cylinder of " + swing,
                CylinderForce.push(cylinder.pressureMPa(), cylinder.boreMm()).value()))
        : Optional.empty();
  }

  /** True for a pin of a cylinder that lies on the axis, between the lugs or beside them. */
  private boolean at(Vector3D pin) {
    double along = row.alongMm(pin);
    Vector3D arm = pin.subtract(row.holes().get(0).at());
    return row.along().crossProduct(arm).getNorm() < AT_PIN_MM
        && along > -AT_PIN_MM
        && along < row.lengthMm() + AT_PIN_MM;
  }

  /** What the file lets the welds of the lugs carry. */
  private double weldLoadN() {
    return ofLugs().stream().mapToDouble(j -> j.joint().loadN().orElse(0.0)).sum();
  }

  private List<JointPlan> ofLugs() {
    return joints.stream().filter(j -> row.holds(j.joint().first())).toList();
  }

  private Optional<PinLoad> carried(Working load) {
    List<String> assumed = new ArrayList<>();
    assumed.add("Pin of C45 as rolled: tensile strength 600 MPa, yield 340 MPa.");
    double lug = row.holes().stream().mapToDouble(Hole::lengthMm).min().orElseThrow();
    boolean pair = row.holes().size() == 2;
    double middle = lug;
    double outer = Math.max(LEAST_EAR_MM, Math.ceil(EAR_SHARE * lug));
    if (pair) {
      Hole first = row.holes().get(0);
      Hole second = row.holes().get(1);
      double open =
          row.alongMm(second.end(row.along(), true)) - row.alongMm(first.end(row.along(), false));
      outer = lug;
      middle = open - 2 * PLAY_MM;
      if (middle <= 0) {
        return Optional.empty();
      }
      assumed.add("An eye fills the gap between the lugs but for 0.5 mm each side.");
    } else {
      assumed.add(
          String.format(Locale.ROOT, "The lug is held between two ears of %.0f mm each.", outer));
    }
    PinnedJoint pin =
        new PinnedJoint(
            row.pinMm(),
            row.boreMm(),
            middle,
            outer,
            PLAY_MM,
            PIN_TENSILE_MPA,
            PIN_YIELD_MPA,
            yieldMPa());
    double design = LOAD_FACTOR * load.forceN();
    return Optional.of(
        new PinLoad(
            load.by(),
            load.forceN(),
            design,
            middle,
            outer,
            PLAY_MM,
            weldLoadN(),
            uses(pin, design, pair),
            assumed));
  }

  private double yieldMPa() {
    return row.holes().stream()
        .mapToDouble(
            hole ->
                Grades.find(hole.part().steel().designation())
                    .map(Grade::yieldMPa)
                    .orElse(OptionalDouble.empty())
                    .orElse(WEAKEST_YIELD_MPA))
        .min()
        .orElse(WEAKEST_YIELD_MPA);
  }

  private List<Use> uses(PinnedJoint pin, double designN, boolean pair) {
    double onLug = pair ? designN / 2 : designN;
    double lug = pair ? pin.outerMm() : pin.middleMm();
    List<Use> uses = new ArrayList<>();
    uses.add(
        new Use(
            "shear of the pin, one plane",
            designN / 2,
            pin.shear().value(),
            "N",
            source(pin.shear())));
    uses.add(
        new Use(
            "bearing in " + (pair ? "each lug" : "the lug"),
            onLug,
            pin.bearing(lug).value(),
            "N",
            source(pin.bearing(lug))));
    uses.add(
        new Use(
            "bending of the pin",
            pin.momentNmm(designN),
            pin.bending().value(),
            "N mm",
            source(pin.bending())));
    uses.add(
        new Use(
            "shear and bending of the pin together",
            pin.combined(designN).value(),
            1,
            "1",
            source(pin.combined(designN))));
    LugEdge edge = LugEdge.of(row, ofLugs());
    uses.add(
        new Use(
            "tear-out: metal beyond the hole",
            pin.beyondHole(onLug, lug).value(),
            edge.beyondMm(),
            "mm",
            source(pin.beyondHole(onLug, lug))));
    uses.add(
        new Use(
            "metal beside the hole",
            pin.besideHole(onLug, lug).value(),
            edge.besideMm(),
            "mm",
            source(pin.besideHole(onLug, lug))));
    return uses;
  }

  private static String source(org.counterpull.quantity.Computed computed) {
    return computed.formula().source();
  }
}
