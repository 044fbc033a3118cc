package org.counterpull.cli;

import java.nio.file.Path;
import java.util.List;
import org.counterpull.coupon.Coupon;
import org.counterpull.coupon.RunPull;
import org.counterpull.coupon.RunPulls;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.weldment.Weldment;

/**
 * The test piece of a file.
 *
 * @param weldment the job
 * @param pulls its runs, the least sure first
 * @param coupon the test piece
 */
record TestPiece(Weldment weldment, List<RunPull> pulls, Coupon coupon) {

  /**
   * Reads a file and designs its test piece.
   *
   * @throws BadInput where nothing is welded
   */
  static TestPiece of(Path file) {
    SoundWeldment sound = SoundWeldment.read(file);
    JointPlanner planner = new JointPlanner(sound.weldment(), ProceduresCommand.book(null));
    List<JointPlan> joints =
        sound.contacts().stream()
            .map(c -> planner.plan(sound.weldment().joint(c.joint()), c))
            .toList();
    List<RunPull> pulls = RunPulls.of(sound.weldment(), joints);
    Coupon coupon =
        Coupon.of(pulls)
            .orElseThrow(
                () ->
                    new BadInput(
                        file
                            + ": nothing is welded, so there is nothing to try out\n"
                            + "Try: joints, and a machine that can weld them"));
    return new TestPiece(sound.weldment(), pulls, coupon);
  }
}
