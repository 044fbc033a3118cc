package org.counterpull.heat.solve;

import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.LinkLaw;
import org.counterpull.heat.link.Pair;
import org.counterpull.heat.material.ThermalMaterial;

/** Heat that one link moves between its two blocks. */
final class LinkTerms {
  /** Temperature at which the conductance of a gap is taken as its upper bound. */
  private static final double HOTTEST_C = 2000;

  final Link link;
  final BlockField a;
  final BlockField b;
  private final boolean oneMetal;
  private boolean laid;

  LinkTerms(Link link, BlockField a, BlockField b) {
    this.link = link;
    this.a = a;
    this.b = b;
    this.oneMetal = link.law() instanceof LinkLaw.Joined && a.material() == b.material();
  }

  /** Sets whether it conducts during a step: laid before the middle of it. */
  void at(double startS, double stepS) {
    laid = link.fromS() <= startS + 0.5 * stepS;
  }

  boolean laid() {
    return laid;
  }

  /** Moves heat between the cells of both sides, as they stand in the current stage. */
  void exchange() {
    for (Pair pair : link.pairs()) {
      double power = powerW(pair);
      a.net()[pair.a().cell()] += power;
      b.net()[pair.b().cell()] -= power;
    }
  }

  /** Power from b to a. */
  double powerW(Pair pair) {
    int cellA = pair.a().cell();
    int cellB = pair.b().cell();
    double depth = pair.a().depthMm() + pair.b().depthMm();
    if (oneMetal) {
      return pair.areaMm2() / depth * (b.theta()[cellB] - a.theta()[cellA]);
    }
    double enthalpyA = a.stage()[cellA];
    double enthalpyB = b.stage()[cellB];
    double tempA = a.material().tempC(enthalpyA);
    double tempB = b.material().tempC(enthalpyB);
    double kA = a.material().conductivityWPerMmK(enthalpyA);
    double kB = b.material().conductivityWPerMmK(enthalpyB);
    double between =
        link.law().resistanceMm2KPerW(pair.distanceMm(), tempA, tempB, 0.5 * (kA + kB));
    double resistance = between;
    if (!(link.law() instanceof LinkLaw.WeldMetal)) {
      resistance += pair.a().depthMm() / kA + pair.b().depthMm() / kB;
    }
    return pair.areaMm2() / resistance * (tempB - tempA);
  }

  /** Adds to the cells of both sides an upper bound of their conductance, W/K. */
  void addBound(double[] ofA, double[] ofB) {
    double k = Math.max(greatest(a.material()), greatest(b.material()));
    for (Pair pair : link.pairs()) {
      double resistance = link.law().resistanceMm2KPerW(pair.distanceMm(), HOTTEST_C, HOTTEST_C, k);
      if (!(link.law() instanceof LinkLaw.WeldMetal)) {
        resistance += (pair.a().depthMm() + pair.b().depthMm()) / k;
      }
      // Twice: a change at either end shows at both.
      ofA[pair.a().cell()] += 2 * pair.areaMm2() / resistance;
      ofB[pair.b().cell()] += 2 * pair.areaMm2() / resistance;
    }
  }

  private static double greatest(ThermalMaterial material) {
    return material.greatestConductivityWPerMmK();
  }
}
