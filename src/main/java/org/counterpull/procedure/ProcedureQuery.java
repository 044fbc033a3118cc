package org.counterpull.procedure;

import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.position.WeldingPosition;

/**
 * What a row is looked for.
 *
 * @param process welding process
 * @param material base material
 * @param joint what is filled
 * @param position ISO 6947
 * @param thicknessMm plate thickness, mm
 * @param diameterMm electrode diameter at hand, mm; any where empty
 * @param gas gas at hand; any where empty
 * @param largestCurrentA current that the machine gives, A; no limit where empty
 */
public record ProcedureQuery(
    WeldingProcess process,
    BaseMaterial material,
    JointForm joint,
    WeldingPosition position,
    double thicknessMm,
    OptionalDouble diameterMm,
    Optional<ShieldingGas> gas,
    OptionalDouble largestCurrentA) {

  /** A gas within this of a row's argon content counts as the row's gas, percentage points. */
  private static final double SAME_GAS_PERCENT = 10;

  /** A wire within this of a row's range counts as the row's wire, mm. */
  private static final double SAME_DIAMETER_MM = 0.051;

  /** A query that any electrode, gas and machine may answer. */
  public static ProcedureQuery of(
      WeldingProcess process,
      BaseMaterial material,
      JointForm joint,
      WeldingPosition position,
      double thicknessMm) {
    return new ProcedureQuery(
        process,
        material,
        joint,
        position,
        thicknessMm,
        OptionalDouble.empty(),
        Optional.empty(),
        OptionalDouble.empty());
  }

  /** The same query for one machine: its electrode, gas and largest current. */
  public ProcedureQuery with(double diameterMm, Optional<ShieldingGas> gas, double currentA) {
    return new ProcedureQuery(
        process,
        material,
        joint,
        position,
        thicknessMm,
        OptionalDouble.of(diameterMm),
        gas,
        OptionalDouble.of(currentA));
  }

  boolean asks(Procedure row) {
    Scope scope = row.scope();
    return scope.process() == process
        && scope.material() == material
        && scope.joint() == joint
        && scope.position() == position
        && fitsDiameter(row)
        && fitsGas(row)
        && (largestCurrentA.isEmpty()
            || row.settings().currentA().low() <= largestCurrentA.getAsDouble());
  }

  private boolean fitsDiameter(Procedure row) {
    if (diameterMm.isEmpty()) {
      return true;
    }
    Range rows = row.electrode().diameterMm();
    double wanted = diameterMm.getAsDouble();
    return wanted >= rows.low() - SAME_DIAMETER_MM && wanted <= rows.high() + SAME_DIAMETER_MM;
  }

  private boolean fitsGas(Procedure row) {
    if (gas.isEmpty() || row.shielding().isEmpty()) {
      return true;
    }
    double argon = row.shielding().get().gas().argonPercent();
    return Math.abs(argon - gas.get().argonPercent()) <= SAME_GAS_PERCENT;
  }
}
