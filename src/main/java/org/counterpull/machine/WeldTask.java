package org.counterpull.machine;

import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.fillet.MinimumFillet;
import org.counterpull.position.WeldingPosition;
import org.counterpull.quantity.Require;

/**
 * A weld that a machine is asked for.
 *
 * @param joint how the parts meet
 * @param thinnerMm thickness of the thinner part, mm
 * @param thickerMm thickness of the thicker part, mm
 * @param legMm fillet leg, mm; the least for the thickness where empty
 * @param position ISO 6947
 * @param ambientC temperature of the parts, C
 * @param shortestT85S shortest cooling time from 800 to 500 C that keeps this steel at 350 to 380
 *     HV, s, where the steel is known
 * @param bar section, where the parts are bars and not plates
 */
public record WeldTask(
    JointKind joint,
    double thinnerMm,
    double thickerMm,
    OptionalDouble legMm,
    WeldingPosition position,
    double ambientC,
    OptionalDouble shortestT85S,
    Optional<BarSection> bar) {

  /** Least leg that an arc lays, mm; thinner plates get it all the same. */
  private static final double LEAST_LAID_MM = 1;

  public WeldTask {
    Require.positive("thinner part", thinnerMm, "mm");
    Require.within("thicker part", thickerMm, thinnerMm, Double.MAX_VALUE, "mm");
    legMm.ifPresent(leg -> Require.positive("leg", leg, "mm"));
    Require.within("ambient temperature", ambientC, -40, 60, "C");
    shortestT85S.ifPresent(t85 -> Require.positive("shortest t8/5", t85, "s"));
  }

  /** A joint of two plates of one thickness, least leg, at 20 C, steel unknown. */
  public static WeldTask plates(JointKind joint, double thicknessMm) {
    return new WeldTask(
        joint,
        thicknessMm,
        thicknessMm,
        OptionalDouble.empty(),
        joint.isFillet() ? WeldingPosition.PB : WeldingPosition.PA,
        20,
        OptionalDouble.empty(),
        Optional.empty());
  }

  /** The same joint in bars of a section. */
  public WeldTask inBars(BarSection section) {
    return new WeldTask(
        joint, thinnerMm, thickerMm, legMm, position, ambientC, shortestT85S, Optional.of(section));
  }

  /** The same joint in another thickness. */
  public WeldTask ofThickness(double thicknessMm) {
    return new WeldTask(
        joint, thicknessMm, thicknessMm, legMm, position, ambientC, shortestT85S, bar);
  }

  /** Leg to lay: the wanted one, or the least for the thicker part, at most the thinner part. */
  public double legToLayMm() {
    return legMm.orElse(Math.max(LEAST_LAID_MM, leastLegMm()));
  }

  /** Least leg by AWS D1.1, never above the thinner part, mm. */
  public double leastLegMm() {
    return Math.min(MinimumFillet.legMm(thickerMm), thinnerMm);
  }
}
