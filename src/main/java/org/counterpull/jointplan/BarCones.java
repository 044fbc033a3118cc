package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.contact.Contact;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.groove.WeldSections;
import org.counterpull.jointplan.EdgePreparation.Kind;

/**
 * The butt of two solid round bars: both ends are turned to cones of 45 degrees that meet at their
 * points, and the room between them is filled all the way round, from the points outwards.
 */
public final class BarCones {
  /** Between both flanks, degrees. */
  private static final double INCLUDED_DEG = 90;

  private static final double SAME = 0.99;

  private BarCones() {}

  /** The line runs round two solid round bars that meet end to end. */
  public static boolean meet(Contact contact, WeldLine line) {
    return contact.form() == JointForm.BUTT
        && line.path() instanceof LinePath.Arc arc
        && arc.sweepRad() > SAME * 2 * Math.PI
        && line.firstWallMm() >= SAME * 2 * arc.radiusMm()
        && line.secondWallMm() >= SAME * 2 * arc.radiusMm();
  }

  /** How deep the room is: the radius of the thinner bar, mm. */
  static double depthMm(WeldLine line) {
    return Math.min(line.firstWallMm(), line.secondWallMm()) / 2;
  }

  static ChosenGroove groove(double depthMm) {
    return new ChosenGroove(
        Kind.V,
        new Groove(Preparation.V, depthMm, 0, 0, INCLUDED_DEG, 0),
        false,
        false,
        false,
        "two solid round bars: cones that meet at their points are open to the arc all the way"
            + " round, and nothing stays unfused in the middle",
        "common practice, no source; volume derived",
        List.of(
            "roll the bars under the arc so that each bead lies flat, and go on where the last bead"
                + " stopped; the first bead melts the points away, and a wasted hollow there is ground"
                + " out before the second"));
  }

  /**
   * Length that the sections of the beads are to be multiplied with: beads near the points run
   * round a smaller circle, and together they fill {@code 4/3 pi r^3} and the cap.
   *
   * @param depthMm radius of the bars
   * @param beadsMm2 sections of all beads together
   */
  static double meanLengthMm(double depthMm, double beadsMm2) {
    double capMm2 = Math.max(0, beadsMm2 - depthMm * depthMm);
    double mm3 = WeldSections.barConesMm3(2 * depthMm) + capMm2 * 2 * Math.PI * depthMm;
    return mm3 / beadsMm2;
  }
}
