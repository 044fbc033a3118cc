package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.List;

/** Blocks that are stepped together, with the links among them and the borders to the others. */
final class Group {
  private final List<BlockField> fields;
  private final List<LinkTerms> inner = new ArrayList<>();
  private final List<Border> borders;
  private final double[] lostFirst = new double[SurfaceTerms.ACCOUNTS];
  private double[] lost = new double[SurfaceTerms.ACCOUNTS];
  private double[] lostOlder = new double[SurfaceTerms.ACCOUNTS];
  private final double stiffness;
  private long cellUpdates;

  Group(List<BlockField> fields, List<LinkTerms> links, List<Border> borders, double stiffness) {
    this.fields = fields;
    this.borders = borders;
    this.stiffness = stiffness;
    for (LinkTerms link : links) {
      if (fields.contains(link.a) && fields.contains(link.b)) {
        inner.add(link);
      }
    }
  }

  List<BlockField> fields() {
    return fields;
  }

  long cellUpdates() {
    return cellUpdates;
  }

  /** Tells surfaces and links which step comes. */
  void at(double startS, double stepS) {
    fields.forEach(f -> f.surface().at(startS + 0.5 * stepS));
    inner.forEach(l -> l.at(startS, stepS));
    borders.forEach(b -> b.terms().at(startS, stepS));
  }

  /** Rates of change at the present state. */
  void rateAtStart() {
    fields.forEach(BlockField::begin);
    evaluate();
    sumLost(lostFirst);
    // The borders' share is added when the step is known; rates without it are completed there.
    if (borders.isEmpty()) {
      fields.forEach(BlockField::rateAtStart);
    }
  }

  /** Works out the state after a step from the present one and its rate. */
  void stages(double stepS) {
    LegendreStages weights = new LegendreStages(LegendreStages.needed(stiffness * stepS));
    double h1 = weights.rate[1] * stepS;
    if (!borders.isEmpty()) {
      borders.forEach(b -> b.start(h1));
      fields.forEach(BlockField::rateAtStart);
    }
    fields.forEach(f -> f.firstStage(h1));
    for (int a = 0; a < lost.length; a++) {
      lostOlder[a] = 0;
      lost[a] = h1 * lostFirst[a];
    }
    for (int j = 2; j <= weights.stages; j++) {
      evaluate();
      double mu = weights.mu[j];
      double nu = weights.nu[j];
      double rate = weights.rate[j] * stepS;
      double first = weights.firstRate[j] * stepS;
      double start = weights.start(j);
      borders.forEach(b -> b.next(mu, nu, rate, first));
      fields.forEach(f -> f.nextStage(mu, nu, start, rate, first));
      lostStage(mu, nu, rate, first);
    }
    for (BlockField f : fields) {
      cellUpdates += (long) weights.stages * f.block().grid().cells();
    }
  }

  private void lostStage(double mu, double nu, double rate, double first) {
    double[] power = new double[lost.length];
    sumLost(power);
    for (int a = 0; a < lost.length; a++) {
      lostOlder[a] = mu * lost[a] + nu * lostOlder[a] + rate * power[a] + first * lostFirst[a];
    }
    double[] newest = lostOlder;
    lostOlder = lost;
    lost = newest;
  }

  /** Estimated error of the step that was worked out, K. */
  double errorK(double stepS) {
    evaluate();
    fields.forEach(BlockField::rateAtEnd);
    double worst = 0;
    for (BlockField f : fields) {
      worst = Math.max(worst, f.errorK(stepS));
    }
    return worst;
  }

  /** Makes the step's end the present; adds what was lost in it by account, J. */
  void accept(double[] lostJ) {
    fields.forEach(BlockField::accept);
    borders.forEach(Border::accept);
    for (int a = 0; a < lost.length; a++) {
      lostJ[a] += lost[a];
    }
  }

  /** After {@link #errorK}: the rates at the end of the step serve as those at the next start. */
  void reuseRates() {
    sumLost(lostFirst);
  }

  private void evaluate() {
    fields.forEach(BlockField::exchange);
    for (LinkTerms link : inner) {
      if (link.laid()) {
        link.exchange();
      }
    }
  }

  private void sumLost(double[] power) {
    java.util.Arrays.fill(power, 0);
    for (BlockField f : fields) {
      for (int a = 0; a < power.length; a++) {
        power[a] += f.lostW()[a];
      }
    }
  }
}
