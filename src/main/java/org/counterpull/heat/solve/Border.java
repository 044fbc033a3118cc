package org.counterpull.heat.solve;

/**
 * A link between a block that is stepped finely and one that waits: the waiting side's temperature
 * is held, and what crosses is added up to be given to it when its own longer step comes.
 */
final class Border {
  private final LinkTerms terms;
  private final boolean aMoves;
  private final double[] first;
  private final double[] power;
  private double[] stage;
  private double[] older;
  private final double[] crossedJ;

  Border(LinkTerms terms, boolean aMoves) {
    this.terms = terms;
    this.aMoves = aMoves;
    int pairs = terms.pairs();
    this.first = new double[pairs];
    this.power = new double[pairs];
    this.stage = new double[pairs];
    this.older = new double[pairs];
    this.crossedJ = new double[pairs];
  }

  LinkTerms terms() {
    return terms;
  }

  /** Power at the start of a step. */
  void start() {
    terms.linearise();
    move(first);
  }

  /** The first stage of its sum. */
  void firstStage(double stepTimesRate) {
    for (int n = 0; n < first.length; n++) {
      older[n] = 0;
      stage[n] = stepTimesRate * first[n];
    }
  }

  /** Later stages, by the same weights as the cells' own. */
  void next(Kernel.Weights w) {
    move(power);
    for (int n = 0; n < power.length; n++) {
      older[n] = w.mu() * stage[n] + w.nu() * older[n] + w.rate() * power[n] + w.first() * first[n];
    }
    double[] newest = older;
    older = stage;
    stage = newest;
  }

  /** Power at the end of a step, for the estimate of its error. */
  void end() {
    move(power);
  }

  void accept() {
    for (int n = 0; n < crossedJ.length; n++) {
      crossedJ[n] += stage[n];
    }
  }

  /** Power into the moving side is taken up by its cells; each pair's power is noted. */
  private void move(double[] out) {
    BlockField moving = aMoves ? terms.a : terms.b;
    for (int n = 0; n < out.length; n++) {
      double intoA = terms.powerW(n);
      out[n] = aMoves ? -intoA : intoA;
      moving.net()[aMoves ? terms.cellA(n) : terms.cellB(n)] -= out[n];
    }
  }

  /** Spreads what crossed over the waiting side's step, as a power into its cells. */
  void give(double stepS) {
    BlockField waiting = aMoves ? terms.b : terms.a;
    for (int n = 0; n < crossedJ.length; n++) {
      waiting.source()[aMoves ? terms.cellB(n) : terms.cellA(n)] += crossedJ[n] / stepS;
    }
    waiting.fed();
  }
}
