package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.power.DutyCycle;

/**
 * What one machine has burnt in the last 10 minutes.
 *
 * <p>Each second of arc uses up {@code 1/X} seconds of the period, with X the duty cycle at its
 * current; no period of 10 minutes may hold more than 10 minutes of that. <b>Source:</b> derived
 * from the definition of the duty cycle in IEC 60974-1. <b>Valid for:</b> passes that alone fit the
 * period; longer ones are stopped on the way, see {@link #stops}.
 */
final class DutyWindow {
  private static final int HALVINGS = 60;

  private record Arc(double startS, double endS, double perSecond) {}

  private final List<Arc> arcs = new ArrayList<>();

  /**
   * Notes an arc.
   *
   * @param startS begin
   * @param endS end, above the begin
   * @param arcS arc-on time in between
   * @param dutyPercent duty cycle at its current
   */
  void burn(double startS, double endS, double arcS, double dutyPercent) {
    arcs.add(new Arc(startS, endS, arcS / (endS - startS) * 100 / dutyPercent));
  }

  /**
   * How long the machine rests before a pass, s.
   *
   * @param nowS now
   * @param passS how long the pass takes, stops included
   * @param arcS arc-on time in it
   * @param dutyPercent duty cycle at its current
   */
  double waitS(double nowS, double passS, double arcS, double dutyPercent) {
    double needS = Math.min(DutyCycle.PERIOD_S, arcS * 100 / dutyPercent);
    double leftS = DutyCycle.PERIOD_S - needS + 1e-6;
    if (usedS(nowS + passS) <= leftS) {
      return 0;
    }
    double tooSoonS = 0;
    double enoughS = DutyCycle.PERIOD_S;
    for (int i = 0; i < HALVINGS; i++) {
      double middleS = (tooSoonS + enoughS) / 2;
      if (usedS(nowS + middleS + passS) <= leftS) {
        enoughS = middleS;
      } else {
        tooSoonS = middleS;
      }
    }
    return enoughS;
  }

  /** How often a pass must be stopped because it is longer than one arc from cold may be. */
  static int stops(double arcS, double dutyPercent) {
    return (int) Math.ceil(arcS / (DutyCycle.PERIOD_S * dutyPercent / 100) - 1e-9) - 1;
  }

  /** Length of each of those stops, s. */
  static double stopS(double dutyPercent) {
    return DutyCycle.PERIOD_S * (1 - dutyPercent / 100);
  }

  private double usedS(double endS) {
    double beginS = endS - DutyCycle.PERIOD_S;
    double used = 0;
    for (Arc arc : arcs) {
      double overlapS = Math.min(endS, arc.endS) - Math.max(beginS, arc.startS);
      used += Math.max(0, overlapS) * arc.perSecond;
    }
    return used;
  }
}
