package org.counterpull.machine;

import org.counterpull.arc.WeldingProcess;

/**
 * Current range of a basic covered electrode (E7018) by its core. From memory: electrode current
 * ranges of machinery handbooks; between the sizes the next thinner one counts.
 *
 * @param lowA least current, A
 * @param highA greatest current, A
 */
record StickRange(double lowA, double highA) {
  /** Share of its least current at which an electrode still burns on thin parts. */
  private static final double STILL_BURNS = 0.75;

  /** A covered electrode set below what it burns at. */
  static boolean needsMore(WorkingPoint point) {
    return point.process() == WeldingProcess.MMA
        && point.currentA() < STILL_BURNS * of(point.diameterMm()).lowA();
  }

  static StickRange of(double coreMm) {
    if (coreMm < 2.3) {
      return new StickRange(40, 70);
    }
    if (coreMm < 3) {
      return new StickRange(70, 105);
    }
    if (coreMm < 3.8) {
      return new StickRange(110, 160);
    }
    return coreMm < 4.7 ? new StickRange(150, 215) : new StickRange(180, 275);
  }
}
