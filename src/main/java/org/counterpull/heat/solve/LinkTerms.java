package org.counterpull.heat.solve;

import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.LinkLaw;
import org.counterpull.heat.link.Pair;
import org.counterpull.heat.material.ThermalMaterial;

/**
 * Heat that one link moves between its two blocks.
 *
 * <p>The power of a pair is linear in the conductivity integrals of both sides: exact within one
 * metal, a tangent laid at the start of each step otherwise.
 */
final class LinkTerms {
  /** Temperature at which the conductance of a gap is taken as its upper bound. */
  private static final double HOTTEST_C = 2000;

  final Link link;
  final BlockField a;
  final BlockField b;
  private final boolean oneMetal;
  private final boolean throughCells;
  private final int[] cellA;
  private final int[] cellB;
  private final double[] constant;
  private final double[] ofA;
  private final double[] ofB;
  private boolean laid;

  LinkTerms(Link link, BlockField a, BlockField b) {
    this.link = link;
    this.a = a;
    this.b = b;
    this.oneMetal = link.law() instanceof LinkLaw.Joined && a.material() == b.material();
    this.throughCells = !(link.law() instanceof LinkLaw.WeldMetal);
    int pairs = link.pairs().size();
    this.cellA = link.pairs().stream().mapToInt(p -> p.a().cell()).toArray();
    this.cellB = link.pairs().stream().mapToInt(p -> p.b().cell()).toArray();
    this.constant = new double[pairs];
    this.ofA = new double[pairs];
    this.ofB = new double[pairs];
    for (int n = 0; n < pairs; n++) {
      Pair pair = link.pairs().get(n);
      double depth = pair.a().depthMm() + pair.b().depthMm();
      ofA[n] = oneMetal ? pair.areaMm2() / depth : 0;
      ofB[n] = ofA[n];
    }
  }

  /** Sets whether it conducts during a step: laid before the middle of it. */
  void at(double startS, double stepS) {
    laid = link.fromS() <= startS + 0.5 * stepS;
  }

  int pairs() {
    return cellA.length;
  }

  int cellA(int n) {
    return cellA[n];
  }

  int cellB(int n) {
    return cellB[n];
  }

  /** Lays the tangents at the state of the stage. */
  void linearise() {
    for (int n = 0; n < constant.length && laid && !oneMetal; n++) {
      linearise(n, link.pairs().get(n));
    }
  }

  private void linearise(int n, Pair pair) {
    double enthalpyA = a.stage()[cellA[n]];
    double enthalpyB = b.stage()[cellB[n]];
    double tempA = a.material().tempC(enthalpyA);
    double tempB = b.material().tempC(enthalpyB);
    double kA = a.material().conductivityWPerMmK(enthalpyA);
    double kB = b.material().conductivityWPerMmK(enthalpyB);
    double resistance =
        link.law().resistanceMm2KPerW(pair.distanceMm(), tempA, tempB, 0.5 * (kA + kB));
    if (throughCells) {
      resistance += pair.a().depthMm() / kA + pair.b().depthMm() / kB;
    }
    double conductance = pair.areaMm2() / resistance;
    ofA[n] = conductance / kA;
    ofB[n] = conductance / kB;
    constant[n] =
        conductance * (tempB - tempA) + ofA[n] * a.theta()[cellA[n]] - ofB[n] * b.theta()[cellB[n]];
  }

  /** Moves heat between the cells of both sides, as they stand in the stage. */
  void exchange() {
    if (!laid) {
      return;
    }
    double[] thetaA = a.theta();
    double[] thetaB = b.theta();
    double[] netA = a.net();
    double[] netB = b.net();
    for (int n = 0; n < cellA.length; n++) {
      double power = constant[n] + ofB[n] * thetaB[cellB[n]] - ofA[n] * thetaA[cellA[n]];
      netA[cellA[n]] += power;
      netB[cellB[n]] -= power;
    }
  }

  /** Power of a pair from b to a. */
  double powerW(int n) {
    return !laid ? 0 : constant[n] + ofB[n] * b.theta()[cellB[n]] - ofA[n] * a.theta()[cellA[n]];
  }

  /** Adds to the cells of both sides an upper bound of their conductance, W/K. */
  void addBound(double[] boundA, double[] boundB) {
    double k = oneMetal ? ofOneMetal(a.material()) : ofTwo(a.material(), b.material());
    for (Pair pair : link.pairs()) {
      double resistance = link.law().resistanceMm2KPerW(pair.distanceMm(), HOTTEST_C, HOTTEST_C, k);
      if (throughCells) {
        resistance += (pair.a().depthMm() + pair.b().depthMm()) / k;
      }
      // Twice: a change at either end shows at both.
      boundA[pair.a().cell()] += 2 * pair.areaMm2() / resistance;
      boundB[pair.b().cell()] += 2 * pair.areaMm2() / resistance;
    }
  }

  private static double ofTwo(ThermalMaterial one, ThermalMaterial other) {
    return Math.max(one.greatestConductivityWPerMmK(), other.greatestConductivityWPerMmK());
  }

  /** As inside a block: times the greatest rise it is the greatest diffusivity. */
  private static double ofOneMetal(ThermalMaterial material) {
    return material.greatestDiffusivityMm2PerS() / material.greatestKPerJMm3();
  }
}
