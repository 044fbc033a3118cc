package org.counterpull.coupon;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.counterpull.calibration.Effect;
import org.counterpull.contact.JointForm;
import org.counterpull.jointplan.RunPlan;

/**
 * What one run does to the shape of the weldment by the closed forms, each effect as the way that
 * the farther end of the part moves.
 *
 * @param run the run
 * @param form of its joint
 * @param plateMm wall that goes on behind the weld
 * @param otherMm the other wall
 * @param movesMm way by effect, mm
 * @param unsureMm share of that way that its factor leaves open: way times the standard deviation
 *     of the factor's logarithm, mm
 */
public record RunPull(
    RunPlan run,
    JointForm form,
    double plateMm,
    double otherMm,
    Map<Effect, Double> movesMm,
    Map<Effect, Double> unsureMm) {

  public RunPull {
    movesMm = Collections.unmodifiableMap(new EnumMap<>(movesMm));
    unsureMm = Collections.unmodifiableMap(new EnumMap<>(unsureMm));
  }

  /** All that it leaves open, mm. */
  public double openMm() {
    return unsureMm.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** What leaves most open. */
  public Effect unsurest() {
    return List.of(Effect.values()).stream()
        .max((a, b) -> Double.compare(unsureMm.get(a), unsureMm.get(b)))
        .orElseThrow();
  }
}
