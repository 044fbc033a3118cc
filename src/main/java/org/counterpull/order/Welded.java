package org.counterpull.order;

import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;

/**
 * A pass that has been laid.
 *
 * @param run the run that it belongs to
 * @param pass which of its passes
 * @param startS when it began, from the beginning of the job, s
 * @param endS when it ended, s
 */
public record Welded(RunPlan run, PassPlan pass, double startS, double endS) {
  public Welded {
    if (!(endS >= startS)) {
      throw new IllegalArgumentException("a pass ends at " + endS + " s, before " + startS + " s");
    }
  }

  /** Net heat of the pass, J. */
  public double netHeatJ() {
    return pass.netHeat().value() * run.weldedMm();
  }
}
