package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.face.Exchange;
import org.counterpull.heat.face.FaceCondition;
import org.counterpull.heat.material.ThermalMaterial;

/** Heat that the surface of one block gives off, patch by patch, in the order of the cells. */
final class SurfaceTerms {
  static final int ACCOUNTS = FaceCondition.Account.values().length;

  /** Hottest surface for which a step is kept stable against radiation. */
  private static final double HOTTEST_C = 2500;

  private final Term[] terms;
  private final List<Sink> sinks;
  private final boolean[] sinkOn;

  /**
   * A patch with its exchange.
   *
   * @param sink the sink that it belongs to or gives way to; -1 for none
   */
  private record Term(
      int cell,
      double areaMm2,
      double depthMm,
      Exchange exchange,
      int account,
      int sink,
      boolean ofSink) {}

  SurfaceTerms(HeatModel model, Block block, Map<Patch, Double> coveredMm2) {
    this.sinks = model.sinks().stream().filter(s -> s.block() == block).toList();
    this.sinkOn = new boolean[sinks.size()];
    List<Term> all = new ArrayList<>();
    for (Patch patch : block.patches()) {
      double free = patch.areaMm2() - coveredMm2.getOrDefault(patch, 0.0);
      if (free > 1e-9 * patch.areaMm2()) {
        add(all, model, block, patch, free);
      }
    }
    all.sort(java.util.Comparator.comparingInt(Term::cell));
    this.terms = all.toArray(Term[]::new);
  }

  private void add(List<Term> all, HeatModel model, Block block, Patch patch, double free) {
    int sink = -1;
    for (int s = 0; s < sinks.size(); s++) {
      if (sinks.get(s).where().test(patch)) {
        sink = s;
        all.add(term(model, patch, free, sinks.get(s).body(), s, true));
      }
    }
    FaceCondition condition = model.condition(block, patch);
    Term term = term(model, patch, free, condition, sink, false);
    if (!term.exchange.nothing()) {
      all.add(term);
    }
  }

  private static Term term(
      HeatModel model,
      Patch patch,
      double free,
      FaceCondition condition,
      int sink,
      boolean ofSink) {
    return new Term(
        patch.cell(),
        free,
        patch.depthMm(),
        condition.at(patch, model.up(), model.ambientC()),
        condition.account().ordinal(),
        sink,
        ofSink);
  }

  /** Sets which sinks are on during a step. */
  void at(double timeS) {
    for (int s = 0; s < sinkOn.length; s++) {
      sinkOn[s] = sinks.get(s).on(timeS);
    }
  }

  /** The first term at or after a cell. */
  int from(int cell) {
    int n = 0;
    while (n < terms.length && terms[n].cell < cell) {
      n++;
    }
    return n;
  }

  /**
   * Takes the heat given off from the cells.
   *
   * @param from first term
   * @param to term after the last
   * @param enthalpy state by cell, J/mm3
   * @param netW power into each cell, from which it is taken
   * @param lostW power by account, set anew
   */
  void take(
      int from,
      int to,
      ThermalMaterial material,
      double[] enthalpy,
      double[] netW,
      double[] lostW) {
    java.util.Arrays.fill(lostW, 0);
    for (int n = from; n < to; n++) {
      Term t = terms[n];
      if (t.sink >= 0 && sinkOn[t.sink] != t.ofSink) {
        continue;
      }
      double h = enthalpy[t.cell];
      double temp = material.tempC(h);
      double coefficient = t.exchange.coefficientWPerMm2K(temp);
      double through = 1 + coefficient * t.depthMm / material.conductivityWPerMmK(h);
      double power = t.areaMm2 * coefficient / through * (temp - t.exchange.bodyC());
      netW[t.cell] -= power;
      lostW[t.account] += power;
    }
  }

  /** Adds to each cell an upper bound of its conductance to the outside, W/K. */
  void addBound(double[] conductanceWPerK) {
    for (Term t : terms) {
      conductanceWPerK[t.cell] += t.areaMm2 * t.exchange.coefficientWPerMm2K(HOTTEST_C);
    }
  }
}
