package org.counterpull.swing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.linkage.CylinderForce;
import org.counterpull.linkage.HoldingForce;
import org.counterpull.linkage.LeverArm;
import org.counterpull.quantity.Computed;
import org.counterpull.swing.SwingResult.Drive;
import org.counterpull.swing.SwingResult.Fault;
import org.counterpull.weldment.Swing;

/** What a cylinder does over a swing. */
final class CylinderWork {
  static final double GRAVITY_M_PER_S2 = 9.81;

  /** Arms below this give no force worth the name, mm. */
  private static final double LEAST_ARM_MM = 1e-6;

  private static final int LOOKS = 360;

  private final Turning turning;
  private final Swing.Cylinder cylinder;
  private final double weightN;
  private final Vector3D centre;

  CylinderWork(Turning turning, Swing.Cylinder cylinder, double weightN, Vector3D centre) {
    this.turning = turning;
    this.cylinder = cylinder;
    this.weightN = weightN;
    this.centre = centre;
  }

  double lengthMm(double deg) {
    return turning.point(cylinder.movingAt(), deg).distance(cylinder.fixedAt());
  }

  Computed armMm(double deg) {
    Vector3D moving = turning.point(cylinder.movingAt(), deg);
    return LeverArm.of(
        turning.uOf(cylinder.fixedAt()),
        turning.vOf(cylinder.fixedAt()),
        turning.uOf(moving),
        turning.vOf(moving));
  }

  /** Moment of the weight about the axis, right-handed, N mm; gravity is down in weldment axes. */
  double momentNmm(double deg) {
    Vector3D arm = turning.point(centre, deg).subtract(turning.at());
    return arm.crossProduct(new Vector3D(0, 0, -weightN)).dotProduct(turning.axis());
  }

  Drive at(double deg) {
    Computed arm = armMm(deg);
    double safe = Math.abs(arm.value()) < LEAST_ARM_MM ? LEAST_ARM_MM : arm.value();
    return new Drive(
        lengthMm(deg),
        arm,
        CylinderForce.push(cylinder.pressureMPa(), cylinder.boreMm()),
        CylinderForce.pull(cylinder.pressureMPa(), cylinder.boreMm(), cylinder.rodMm()),
        HoldingForce.of(momentNmm(deg), safe));
  }

  List<Fault> faults(Swing swing) {
    List<Fault> faults = new ArrayList<>();
    double shortest = Double.MAX_VALUE;
    double longest = 0;
    double worst = 0;
    double worstDeg = swing.fromDeg();
    double overCentre = Double.NaN;
    double sign = Math.signum(armMm(swing.fromDeg()).value());
    for (int i = 0; i <= LOOKS; i++) {
      double deg = swing.fromDeg() + (swing.toDeg() - swing.fromDeg()) * i / LOOKS;
      Drive drive = at(deg);
      shortest = Math.min(shortest, drive.lengthMm());
      longest = Math.max(longest, drive.lengthMm());
      if (Double.isNaN(overCentre) && Math.signum(drive.armMm().value()) != sign) {
        overCentre = deg;
      }
      if (used(drive) > worst) {
        worst = used(drive);
        worstDeg = deg;
      }
    }
    stroke(faults, shortest, longest);
    if (!Double.isNaN(overCentre)) {
      faults.add(
          new Fault(
              text(
                  "it goes over centre at %.1f degrees: there the cylinder has no lever, and"
                      + " beyond it a push turns the other way",
                  overCentre),
              "move one of the pins so that the line between them stays on one side of the hinge"));
    } else if (worst > 1) {
      faults.add(
          new Fault(
              text(
                  "at %.1f degrees the weight needs %.0f %% of what the cylinder can give",
                  worstDeg, 100 * worst),
              "a larger bore, more pressure, or a pin farther from the hinge"));
    }
    return faults;
  }

  private void stroke(List<Fault> faults, double shortest, double longest) {
    double closed = cylinder.closedMm();
    double open = closed + cylinder.strokeMm();
    if (shortest - closed < cylinder.reserveMm()) {
      faults.add(
          new Fault(
              text(
                  "the pins come as near as %.1f mm, and the cylinder is %.1f mm long closed:"
                      + " %.1f mm of stroke are left, %.0f mm are wanted",
                  shortest, closed, shortest - closed, cylinder.reserveMm()),
              "a shorter cylinder, or a pin farther away"));
    }
    if (open - longest < cylinder.reserveMm()) {
      faults.add(
          new Fault(
              text(
                  "the pins come %.1f mm apart, and the cylinder is %.1f mm long open:"
                      + " %.1f mm of stroke are left, %.0f mm are wanted",
                  longest, open, open - longest, cylinder.reserveMm()),
              "a longer stroke, a smaller range, or a pin nearer to the hinge"));
    }
  }

  /** Share of the force that the weight takes. */
  static double used(Drive drive) {
    double needed = drive.neededN().value();
    return needed >= 0 ? needed / drive.pushN().value() : -needed / drive.pullN().value();
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
