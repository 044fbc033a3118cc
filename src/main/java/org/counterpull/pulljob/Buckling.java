package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.plan.PullAnswer.Slender;
import org.counterpull.shrinkage.BucklingStress;
import org.counterpull.stock.Flat;
import org.counterpull.stock.Plate;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Thin plates under the force of the runs along them: a strip beside the outermost run has a free
 * edge, a panel between two runs is held at both.
 *
 * <p>Source: see {@link BucklingStress}.
 */
final class Buckling {
  private static final double THIN_WIDTHS = 20;
  private static final double ALONG = 0.9;
  private static final double SAME_LINE_MM = 5;

  private Buckling() {}

  /** All plates and flats at least {@value #THIN_WIDTHS} times as wide as thick with runs along. */
  static List<Slender> of(Weldment weldment, List<PulledRun> runs, List<Amounts> amounts) {
    List<Slender> slender = new ArrayList<>();
    for (Part part : weldment.parts()) {
      boolean flat = part.stock() instanceof Flat || part.stock() instanceof Plate;
      if (flat && part.outline().isEmpty()) {
        double h = part.stock().upMm();
        if (part.stock().acrossMm() >= THIN_WIDTHS * h) {
          slender.addAll(
              plate(
                  part,
                  runs,
                  amounts,
                  part.frame().x(),
                  part.stock().acrossMm(),
                  part.frame().y(),
                  part.lengthMm()));
        }
      }
    }
    return slender;
  }

  private static List<Slender> plate(
      Part part,
      List<PulledRun> runs,
      List<Amounts> amounts,
      Vector3D way,
      double widthMm,
      Vector3D aside,
      double lengthMm) {
    List<Double> lines = new ArrayList<>();
    double force = 0;
    for (int r = 0; r < runs.size(); r++) {
      PulledRun run = runs.get(r);
      double along = run.path().tangent(run.path().lengthMm() / 2).dotProduct(way);
      for (int i = 0; i < run.walls().size(); i++) {
        if (run.walls().get(i).part().equals(part.name()) && Math.abs(along) > ALONG) {
          force += amounts.get(r).walls().get(i).alongN() * run.weldedMm() / lengthMm;
          lines.add(run.middle().subtract(part.frame().origin()).dotProduct(aside));
        }
      }
    }
    if (lines.isEmpty()) {
      return List.of();
    }
    double h = part.stock().upMm();
    double stress = leastStress(lines, widthMm, h, lengthMm);
    double limit = BucklingStress.loadN(stress, h * widthMm);
    return List.of(new Slender(part.name(), force, limit, stress, force > limit));
  }

  private static double leastStress(List<Double> lines, double widthMm, double h, double lengthMm) {
    List<Double> sorted = lines.stream().sorted().toList();
    double least = Double.MAX_VALUE;
    double before = -widthMm / 2;
    for (int i = 0; i <= sorted.size(); i++) {
      boolean last = i == sorted.size();
      double here = last ? widthMm / 2 : sorted.get(i);
      double strip = here - before;
      if (strip > SAME_LINE_MM) {
        boolean free = i == 0 || last;
        double k =
            free
                ? BucklingStress.freeEdgeCoefficient(strip, lengthMm)
                : BucklingStress.PANEL_COEFFICIENT;
        least = Math.min(least, BucklingStress.of(k, h, strip).value());
      }
      before = here;
    }
    return least;
  }
}
