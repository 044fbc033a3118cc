package org.counterpull.power;

import java.util.Comparator;
import java.util.List;
import org.counterpull.quantity.Require;

/**
 * Duty cycle at any current from all the points of a plate.
 *
 * <p>Between two points the duty runs straight in log-log, which honours the plate where a machine
 * departs from the square law; outside them the square law of {@link DutyCycle} goes on from the
 * nearest point. Never above 100 %.
 *
 * @param points at least one point; kept by rising current
 */
public record PlateDuty(List<DutyPoint> points) {
  public PlateDuty {
    if (points.isEmpty()) {
      throw new IllegalArgumentException("a plate needs at least one duty point");
    }
    points = points.stream().sorted(Comparator.comparingDouble(DutyPoint::currentA)).toList();
    for (int i = 1; i < points.size(); i++) {
      DutyPoint lower = points.get(i - 1);
      DutyPoint upper = points.get(i);
      if (upper.currentA() == lower.currentA() || upper.dutyPercent() > lower.dutyPercent()) {
        throw new IllegalArgumentException(
            "duty points must fall with rising current: " + lower + ", " + upper);
      }
    }
  }

  /**
   * Duty cycle, %.
   *
   * @param currentA welding current, A, above 0
   */
  public double percentAt(double currentA) {
    Require.positive("welding current", currentA, "A");
    DutyPoint first = points.get(0);
    DutyPoint last = points.get(points.size() - 1);
    if (currentA <= first.currentA()) {
      return DutyCycle.percent(first.currentA(), first.dutyPercent(), currentA);
    }
    if (currentA >= last.currentA()) {
      return DutyCycle.percent(last.currentA(), last.dutyPercent(), currentA);
    }
    int upper = 1;
    while (points.get(upper).currentA() < currentA) {
      upper++;
    }
    return between(points.get(upper - 1), points.get(upper), currentA);
  }

  private static double between(DutyPoint low, DutyPoint high, double currentA) {
    double slope =
        Math.log(high.dutyPercent() / low.dutyPercent())
            / Math.log(high.currentA() / low.currentA());
    return low.dutyPercent() * Math.pow(currentA / low.currentA(), slope);
  }
}
