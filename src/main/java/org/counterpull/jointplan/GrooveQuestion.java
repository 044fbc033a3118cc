package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.JointForm;
import org.counterpull.feeding.TransferMode;
import org.counterpull.fillet.PartialPenetrationThroat.Manner;
import org.counterpull.groove.Groove;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.procedure.BaseMaterial;
import org.counterpull.weldment.EdgeTool;
import org.counterpull.weldment.Joint.WeldKind;

/**
 * What decides the form of a groove.
 *
 * @param asked what the file asks for
 * @param form how the parts meet
 * @param thicknessMm of the prepared part
 * @param throatMm wanted effective throat of each side; empty for full penetration
 * @param bothSides both faces are welded
 * @param position ISO 6947, of the first side
 * @param point how the machine is set
 * @param fusedFaceMm largest root face that this machine fuses
 * @param square square edges that this machine fuses through; empty where it doesn't
 * @param material of the parts
 * @param tools what edges are cut with
 */
record GrooveQuestion(
    WeldKind asked,
    JointForm form,
    double thicknessMm,
    OptionalDouble throatMm,
    boolean bothSides,
    WeldingPosition position,
    WorkingPoint point,
    double fusedFaceMm,
    Optional<Groove> square,
    BaseMaterial material,
    List<EdgeTool> tools) {
  /** Sticks up to this current are kept away from the flanks: common practice, no source. */
  private static final double SMALL_STICK_A = 140;

  GrooveQuestion {
    tools = List.copyOf(tools);
  }

  boolean partial() {
    return throatMm.isPresent();
  }

  /** One edge is cut: the other part goes on, or is the lower edge of a horizontal joint. */
  boolean oneEdge() {
    return form != JointForm.BUTT || position == WeldingPosition.PC;
  }

  boolean mills() {
    return tools.contains(EdgeTool.MILL);
  }

  /** Included angle of a V: wide for a small stick, narrow where the arc digs. */
  double includedDeg() {
    if (material == BaseMaterial.ALUMINIUM || smallStick()) {
      return 70;
    }
    return digs() ? 50 : 60;
  }

  /** Angle of one bevelled edge. */
  double bevelDeg() {
    return smallStick() ? 50 : 45;
  }

  private boolean smallStick() {
    return point.process() == WeldingProcess.MMA && point.currentA() <= SMALL_STICK_A;
  }

  private boolean digs() {
    return switch (point.process()) {
      case MAG -> point.transfer() == TransferMode.SPRAY;
      case FCAW -> true;
      case MIG, FCAW_S, MMA, TIG -> false;
    };
  }

  /** How a partial penetration groove of 45 degrees is counted. */
  Manner manner() {
    if (point.process() == WeldingProcess.MMA || point.process() == WeldingProcess.TIG) {
      return Manner.STICK;
    }
    return switch (position) {
      case PA, PB, PC -> Manner.WIRE_FLAT_OR_HORIZONTAL;
      case PD, PE, PF, PG -> Manner.WIRE_VERTICAL_OR_OVERHEAD;
    };
  }
}
