package org.counterpull.coupon;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.WeldLine;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.HeatShare;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonForce;
import org.counterpull.solid.Box;
import org.counterpull.solid.Solid;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * The pulls of a job's runs by the closed forms alone, without the stiffness of what they pull on:
 * enough to say which of them a test piece should stand for.
 *
 * <p>The angle moves the far corner of the fitted part by angle times distance; the force along the
 * run bends the part that it lies on, a run of length l by F e l / (E I) and its end by a quarter
 * of its length times that, with e half of the depth and the radius of gyration 0.35 of it (a rough
 * mean of bars and tubes, a judgement).
 */
public final class RunPulls {
  private static final double GYRATION_PER_DEPTH = 0.35;
  private static final double END_PER_LENGTH = 0.25;

  private RunPulls() {}

  /** One for each run of the joints, the least sure first. */
  public static List<RunPull> of(Weldment weldment, List<JointPlan> joints) {
    List<RunPull> pulls = new ArrayList<>();
    for (JointPlan joint : joints) {
      joint.runs().forEach(run -> pulls.add(of(weldment, joint, run)));
    }
    pulls.sort((a, b) -> Double.compare(b.openMm(), a.openMm()));
    return List.copyOf(pulls);
  }

  private static RunPull of(Weldment weldment, JointPlan joint, RunPlan run) {
    WeldLine line = run.line();
    JointForm form = joint.contact().form();
    double plate = line.secondWallMm();
    double other = line.firstWallMm();
    double heat = plateHeat(form, run.netHeatJPerMm(), plate, other);
    Part fitted = weldment.part(joint.joint().first());
    Part base = weldment.part(joint.joint().second());
    Map<Effect, Double> moves = new EnumMap<>(Effect.class);
    moves.put(Effect.ACROSS, FreeShrinkage.of(heat, plate).value());
    moves.put(Effect.ANGLE, angleRad(form, run, plate, other) * reachMm(fitted, line));
    moves.put(Effect.ALONG, bowMm(run, base));
    Map<Effect, Double> unsure = new EnumMap<>(Effect.class);
    moves.forEach(
        (effect, mm) -> {
          FactorBand factor = weldment.factor(run.process(), effect);
          unsure.put(effect, mm * factor.median() * factor.ofOneRun().sigmaLog());
        });
    return new RunPull(run, form, plate, other, moves, unsure);
  }

  /** Free angle of the wall that goes on, the sum over the passes. */
  static double angleRad(JointForm form, RunPlan run, double plateMm, double otherMm) {
    return run.passes().stream()
        .mapToDouble(
            pass ->
                FreeAngle.of(plateHeat(form, pass.netHeat().value(), plateMm, otherMm), plateMm)
                    .value())
        .sum();
  }

  /** Net heat into the wall that goes on, J/mm. */
  static double plateHeat(JointForm form, double netHeatJPerMm, double plateMm, double otherMm) {
    return switch (form) {
      case BUTT, EDGE -> netHeatJPerMm;
      case TEE, LAP -> netHeatJPerMm * HeatShare.share(2, plateMm, 1, otherMm);
      case CORNER -> netHeatJPerMm * HeatShare.share(1, plateMm, 1, otherMm);
    };
  }

  private static double reachMm(Part part, WeldLine line) {
    Box box = Solid.of(part).box();
    Vector3D middle = line.path().at(line.path().lengthMm() / 2);
    double[] low = box.low().toArray();
    double[] high = box.high().toArray();
    double[] at = middle.toArray();
    double sum = 0;
    for (int i = 0; i < at.length; i++) {
      double far = Math.max(Math.abs(at[i] - low[i]), Math.abs(high[i] - at[i]));
      sum += far * far;
    }
    return Math.sqrt(sum);
  }

  private static double bowMm(RunPlan run, Part base) {
    Stock stock = base.stock();
    double depth = Math.max(stock.upMm(), Math.min(stock.acrossMm(), base.lengthMm()));
    double force = TendonForce.of(run.netHeatJPerMm()).value();
    double gyration = GYRATION_PER_DEPTH * depth;
    double kink =
        force
            * (depth / 2)
            * run.weldedMm()
            / (ShrinkageMaterial.CARBON_STEEL.elasticModulusMPa()
                * areaMm2(base)
                * gyration
                * gyration);
    return END_PER_LENGTH * kink * base.lengthMm();
  }

  private static double areaMm2(Part part) {
    return Solid.of(part).volumeMm3() / part.lengthMm();
  }
}
