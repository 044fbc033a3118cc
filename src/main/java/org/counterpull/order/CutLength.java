package org.counterpull.order;

import java.util.List;
import org.counterpull.contact.Contact;
import org.counterpull.contact.JointForm;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.weldment.Part;

/**
 * Length that a piece is cut to: drawn length, less the root gap that isn't drawn, plus what its
 * butt welds pull it in.
 *
 * <p>The allowance for a butt is {@code 0.20 A_w / h + 0.05 d}, with the weld metal's area A_w, the
 * thickness h and the root gap d. <b>Source:</b> from memory: Spraragen and Ettinger 1950. <b>Valid
 * for:</b> butts of 6 to 25 mm with little restraint; it is an upper value, so a piece is rather
 * too long. It is given to the part that is fitted.
 *
 * @param drawnMm length in the file
 * @param gapMm taken off for root gaps
 * @param shrinkageMm added for shrinkage
 */
public record CutLength(double drawnMm, double gapMm, double shrinkageMm) {

  /**
   * Of a part.
   *
   * @param part the part
   * @param joints plans of all joints
   */
  public static CutLength of(Part part, List<JointPlan> joints) {
    double gapMm = 0;
    double shrinkageMm = 0;
    for (JointPlan plan : joints) {
      Contact contact = plan.contact();
      if (plan.joint().first().equals(part.name()) && contact.form() == JointForm.BUTT) {
        double rootGapMm = plan.preparation().rootGapMm();
        gapMm += Math.max(0, rootGapMm - Math.max(plan.joint().gapMm(), contact.gapMm()));
        shrinkageMm += shrinkageMm(plan, rootGapMm);
      }
    }
    return new CutLength(part.lengthMm(), gapMm, shrinkageMm);
  }

  private static double shrinkageMm(JointPlan plan, double rootGapMm) {
    double areaMm2 = 0;
    double thicknessMm = Double.POSITIVE_INFINITY;
    for (RunPlan run : plan.runs()) {
      areaMm2 += run.passes().stream().map(PassPlan::area).mapToDouble(a -> a.value()).sum();
      thicknessMm =
          Math.min(thicknessMm, Math.min(run.line().firstWallMm(), run.line().secondWallMm()));
    }
    return areaMm2 == 0 ? 0 : 0.20 * areaMm2 / thicknessMm + 0.05 * rootGapMm;
  }

  /** Length to cut. */
  public double cutMm() {
    return drawnMm - gapMm + shrinkageMm;
  }

  /** Length to cut, as printed. */
  String cut() {
    return Steps.mm(cutMm());
  }

  /** How it comes about, in a sentence. */
  String words() {
    if (gapMm == 0 && shrinkageMm == 0) {
      return "Cut to the drawn length: no gap or shrinkage to allow for at its ends.";
    }
    return "Drawn "
        + Steps.mm(drawnMm)
        + " mm, less "
        + Steps.mm(gapMm)
        + " mm for the root gap, plus "
        + Steps.mm(shrinkageMm)
        + " mm for the shrinkage of the butt.";
  }
}
