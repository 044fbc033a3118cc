package org.counterpull.planning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.access.Spot;
import org.counterpull.contact.LinePath;
import org.counterpull.cooling.AdamsPeakTemperature;
import org.counterpull.heatjob.FeatureLimits;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.plan.PlanHeat;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Weldment;

/**
 * Seals and bearings that stay in while their own part is welded: refused where their place gets
 * above what they bear. The peak is that of the heat model where the plan has it; else a first
 * estimate, the peak beside the hottest pass in a wide plate, which warms less than a small part
 * does.
 */
final class SensitiveNear {
  /** Mild steel between room temperature and melting, J/mm3K: common practice, no source. */
  private static final double HEAT_CAPACITY = 0.0044;

  private static final double MELTING_C = 1500;
  private static final int LOOKS = 20;

  private SensitiveNear() {}

  /** The worst run of a feature. */
  private record Hot(RunPlan run, double distanceMm, double peakC, String by) {
    Hot with(double simulatedC) {
      return new Hot(run, distanceMm, simulatedC, "heat model, all runs");
    }
  }

  /** The hottest that the heat model makes a feature. */
  private static Optional<Double> simulated(Feature feature, Optional<PlanHeat> heat) {
    return heat.stream()
        .flatMap(h -> h.spots().stream())
        .filter(spot -> spot.feature() && spot.name().equals(feature.name()))
        .map(PlanHeat.Spot::peakC)
        .max(Comparator.naturalOrder());
  }

  static List<Refusal> of(Weldment weldment, List<JointPlan> joints, Optional<PlanHeat> heat) {
    List<Refusal> refusals = new ArrayList<>();
    for (Feature feature : weldment.features()) {
      boolean spoilt =
          feature.kind() == Feature.Kind.SEAL || feature.kind() == Feature.Kind.BEARING;
      Optional<Double> limit = FeatureLimits.of(feature);
      if (spoilt && !feature.removable() && limit.isPresent()) {
        hottest(weldment, feature, joints)
            .map(hot -> simulated(feature, heat).map(hot::with).orElse(hot))
            .filter(hot -> hot.peakC() > limit.get())
            .ifPresent(hot -> refusals.add(refusal(feature, hot, limit.get())));
      }
    }
    return refusals;
  }

  private static Refusal refusal(Feature feature, Hot hot, double limitC) {
    return new Refusal(
        feature.name(),
        String.format(
            Locale.ROOT,
            "the %s stays in while %s is welded %.0f mm from it: about %.0f C there (%s), and it"
                + " bears %.0f C (R08; common practice, no source)",
            feature.kind().words(),
            hot.run().name(),
            hot.distanceMm(),
            hot.peakC(),
            hot.by(),
            limitC),
        "take it out before the first arc and say removable: true; new seals and bearings go in cold."
            + " Or hold the part with bolts, a saddle or a sleeve");
  }

  private static Optional<Hot> hottest(Weldment weldment, Feature feature, List<JointPlan> joints) {
    Optional<Hot> worst = Optional.empty();
    for (JointPlan plan : joints) {
      boolean own =
          feature.parts().contains(plan.joint().first())
              || feature.parts().contains(plan.joint().second());
      for (RunPlan run : own ? plan.runs() : List.<RunPlan>of()) {
        Hot hot = at(weldment, feature, run);
        if (worst.isEmpty() || hot.peakC() > worst.get().peakC()) {
          worst = Optional.of(hot);
        }
      }
    }
    return worst;
  }

  private static Hot at(Weldment weldment, Feature feature, RunPlan run) {
    double netHeat =
        run.passes().stream().mapToDouble(pass -> pass.netHeat().value()).max().orElseThrow();
    double wallMm = Math.min(run.line().firstWallMm(), run.line().secondWallMm());
    double distanceMm = distanceMm(weldment, feature, run.line().path());
    double ambientC = weldment.surroundings().ambientC();
    double peakC =
        AdamsPeakTemperature.of(netHeat, wallMm, distanceMm, ambientC, MELTING_C, HEAT_CAPACITY)
            .value();
    return new Hot(run, distanceMm, peakC, "first estimate");
  }

  /** From the line to the nearest edge of the feature, 0 when it passes through. */
  private static double distanceMm(Weldment weldment, Feature feature, LinePath path) {
    double least = Double.MAX_VALUE;
    for (Spot spot : Spot.of(weldment, feature)) {
      for (int i = 0; i <= LOOKS; i++) {
        Vector3D arm = path.at(path.lengthMm() * i / LOOKS).subtract(spot.at());
        double along = arm.dotProduct(spot.axis());
        double across = Math.sqrt(Math.max(0, arm.getNormSq() - along * along));
        double beyond = Math.max(0, Math.abs(along) - feature.lengthMm().orElse(0.0) / 2);
        double off = Math.abs(across - spot.diameterMm() / 2);
        least = Math.min(least, Math.hypot(off, beyond));
      }
    }
    return least;
  }
}
