package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.List;

/** Blocks that are stepped together, with the links among them and the borders to the others. */
final class Group {
  private final List<BlockField> fields;
  private final List<LinkTerms> inner = new ArrayList<>();
  private final List<Border> borders;
  private final int cells;
  private final double stiffness;
  private final double[] lostFirst = new double[SurfaceTerms.ACCOUNTS];
  private double[] lost = new double[SurfaceTerms.ACCOUNTS];
  private double[] lostOlder = new double[SurfaceTerms.ACCOUNTS];

  Group(List<BlockField> fields, List<LinkTerms> links, List<Border> borders, double stiffness) {
    this.fields = fields;
    this.borders = borders;
    this.stiffness = stiffness;
    this.cells = fields.stream().mapToInt(f -> f.block().grid().cells()).sum();
    for (LinkTerms link : links) {
      if (fields.contains(link.a) && fields.contains(link.b)) {
        inner.add(link);
      }
    }
  }

  List<BlockField> fields() {
    return fields;
  }

  int cells() {
    return cells;
  }

  List<Border> borders() {
    return borders;
  }

  /** Tells surfaces and links which step comes. */
  void at(double startS, double stepS) {
    fields.forEach(f -> f.surface().at(startS + 0.5 * stepS));
    inner.forEach(l -> l.at(startS, stepS));
    borders.forEach(b -> b.terms().at(startS, stepS));
  }

  /** Rates of change at the present state. */
  void rateAtStart() {
    Crew.run(cells, half -> fields.forEach(f -> f.begin(half)));
    inner.forEach(LinkTerms::linearise);
    pass();
    borders.forEach(Border::start);
    sumLost(lostFirst);
    Crew.run(cells, half -> fields.forEach(f -> f.rateAtStart(half)));
  }

  /**
   * Works out the state after a step from the present one and its rate.
   *
   * @return cells times stages
   */
  long stages(double stepS) {
    LegendreStages weights = new LegendreStages(LegendreStages.needed(stiffness * stepS));
    double first = weights.rate[1] * stepS;
    Crew.run(cells, half -> fields.forEach(f -> f.firstStage(half, first)));
    borders.forEach(b -> b.firstStage(first));
    for (int a = 0; a < lost.length; a++) {
      lostOlder[a] = 0;
      lost[a] = first * lostFirst[a];
    }
    fields.forEach(BlockField::startStages);
    for (int j = 2; j <= weights.stages; j++) {
      Kernel.Weights w = weights.of(j, stepS);
      pass();
      borders.forEach(b -> b.next(w));
      lostStage(w);
      Crew.run(cells, half -> fields.forEach(f -> f.nextStage(half, w)));
      fields.forEach(BlockField::turn);
    }
    return (long) weights.stages * cells;
  }

  private void lostStage(Kernel.Weights w) {
    double[] power = new double[lost.length];
    sumLost(power);
    for (int a = 0; a < lost.length; a++) {
      lostOlder[a] =
          w.mu() * lost[a] + w.nu() * lostOlder[a] + w.rate() * power[a] + w.first() * lostFirst[a];
    }
    double[] newest = lostOlder;
    lostOlder = lost;
    lost = newest;
  }

  /** Estimated error of the step that was worked out, over what is allowed. */
  double error(double stepS, double ambientC, double toleranceK) {
    pass();
    borders.forEach(Border::end);
    Crew.run(cells, half -> fields.forEach(f -> f.rateAtEnd(half)));
    double worst = 0;
    for (BlockField f : fields) {
      worst = Math.max(worst, f.error(stepS, ambientC, toleranceK));
    }
    return worst;
  }

  /** Makes the step's end the present; adds what was lost in it by account, J. */
  void accept(double stepS, double[] lostJ) {
    fields.forEach(f -> f.accept(stepS));
    borders.forEach(Border::accept);
    for (int a = 0; a < lost.length; a++) {
      lostJ[a] += lost[a];
    }
  }

  /** What passes between cells other than over the lattice, in the stage. */
  private void pass() {
    fields.forEach(BlockField::passEdges);
    inner.forEach(LinkTerms::exchange);
  }

  private void sumLost(double[] power) {
    for (int a = 0; a < power.length; a++) {
      power[a] = 0;
      for (BlockField f : fields) {
        power[a] += f.lostW(a);
      }
    }
  }
}
