package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Tubes that welding closes at both ends. An end counts as closed when runs that go round at least
 * nine tenths of the tube's outline lie at it. A hole in the tube is a vent already.
 */
public final class Cavities {
  private static final double ROUND = 0.9;

  private Cavities() {}

  /**
   * A closed tube.
   *
   * @param part name of the tube
   * @param runs names of the runs at its ends
   */
  public record Cavity(String part, Set<String> runs) {
    public Cavity {
      runs = Set.copyOf(runs);
    }
  }

  /** Every tube that is closed when all runs are in and that has no hole, file order. */
  public static List<Cavity> of(Weldment weldment, List<JointPlan> joints) {
    List<Cavity> cavities = new ArrayList<>();
    for (Part part : weldment.parts()) {
      double outlineMm = outlineMm(part);
      if (outlineMm > 0 && !hasHole(weldment, part)) {
        Set<String> left = new TreeSet<>();
        Set<String> right = new TreeSet<>();
        if (runsAt(part, joints, 0, left) >= ROUND * outlineMm
            && runsAt(part, joints, part.lengthMm(), right) >= ROUND * outlineMm) {
          left.addAll(right);
          cavities.add(new Cavity(part.name(), left));
        }
      }
    }
    return cavities;
  }

  private static double outlineMm(Part part) {
    if (part.stock() instanceof RectangularTube tube) {
      return 2 * (tube.acrossMm() + tube.upMm());
    }
    return part.stock() instanceof RoundTube tube ? Math.PI * tube.outsideMm() : 0;
  }

  private static boolean hasHole(Weldment weldment, Part part) {
    return weldment.features().stream()
        .anyMatch(f -> f.kind() == Feature.Kind.HOLE && f.parts().contains(part.name()));
  }

  private static double runsAt(Part part, List<JointPlan> joints, double endMm, Set<String> names) {
    double nearMm = 3 * part.stock().thickestMm();
    double lengthMm = 0;
    for (JointPlan plan : joints) {
      if (!plan.joint().first().equals(part.name()) && !plan.joint().second().equals(part.name())) {
        continue;
      }
      for (RunPlan run : plan.runs()) {
        var path = run.line().path();
        double startMm = part.frame().into(path.start()).getX();
        double middleMm = part.frame().into(path.at(path.lengthMm() / 2)).getX();
        if (Math.abs(startMm - endMm) <= nearMm && Math.abs(middleMm - endMm) <= nearMm) {
          names.add(run.name());
          lengthMm += run.weldedMm();
        }
      }
    }
    return lengthMm;
  }
}
