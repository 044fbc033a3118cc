package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.face.Exchange;
import org.counterpull.heat.face.FaceCondition;
import org.counterpull.heat.material.ThermalMaterial;

/**
 * Heat that the surface of one block gives off, in the order of its cells.
 *
 * <p>The power of a cell is a tangent over its conductivity integral, laid at the start of each
 * step: second order, as the step itself.
 */
final class SurfaceTerms {
  static final int ACCOUNTS = FaceCondition.Account.values().length;
  static final int AIR = FaceCondition.Account.AIR.ordinal();
  static final int BODIES = FaceCondition.Account.BODIES.ordinal();

  /** Hottest surface for which a step is kept stable against radiation. */
  private static final double HOTTEST_C = 2500;

  private final Term[] terms;
  private final List<Sink> sinks;
  private final boolean[] sinkOn;
  private final int[] cell;
  private final int[] account;
  private final int[] merged;
  private final double[] constant;
  private final double[] perTheta;

  /**
   * A patch with its exchange.
   *
   * @param sink the sink that it belongs to or gives way to; -1 for none
   */
  private record Term(
      int cell,
      Side side,
      double areaMm2,
      double depthMm,
      Exchange exchange,
      int account,
      int sink,
      boolean ofSink) {}

  private SurfaceTerms(List<Sink> sinks, List<Term> all) {
    this.sinks = sinks;
    this.sinkOn = new boolean[sinks.size()];
    all.sort(Comparator.comparingInt(Term::cell).thenComparingInt(Term::account));
    this.terms = all.toArray(Term[]::new);
    this.merged = new int[terms.length];
    int count = 0;
    for (int n = 0; n < terms.length; n++) {
      boolean same =
          n > 0 && terms[n].cell == terms[n - 1].cell && terms[n].account == terms[n - 1].account;
      merged[n] = same ? count - 1 : count++;
    }
    this.cell = new int[count];
    this.account = new int[count];
    for (int n = 0; n < terms.length; n++) {
      cell[merged[n]] = terms[n].cell;
      account[merged[n]] = terms[n].account;
    }
    this.constant = new double[count];
    this.perTheta = new double[count];
  }

  /** The surface of a block of a model, without what links cover. */
  static SurfaceTerms of(HeatModel model, Block block, Map<Patch, Double> coveredMm2) {
    List<Sink> sinks = model.sinks().stream().filter(s -> s.block() == block).toList();
    List<Term> all = new ArrayList<>();
    for (Patch patch : block.patches()) {
      double free = patch.areaMm2() - coveredMm2.getOrDefault(patch, 0.0);
      if (free > 1e-9 * patch.areaMm2()) {
        add(all, sinks, model, block, patch, free);
      }
    }
    return new SurfaceTerms(sinks, all);
  }

  /** The same surface on wider cells. */
  SurfaceTerms on(WiderCells wider) {
    Map<Term, Double> areas = new LinkedHashMap<>();
    for (Term t : terms) {
      double depth = wider.depthMm(t.cell, t.side, t.depthMm);
      Term alike =
          new Term(wider.parent(t.cell), t.side, 1, depth, t.exchange, t.account, t.sink, t.ofSink);
      areas.merge(alike, t.areaMm2, Double::sum);
    }
    List<Term> all = new ArrayList<>();
    areas.forEach(
        (t, area) ->
            all.add(
                new Term(
                    t.cell, t.side, area, t.depthMm, t.exchange, t.account, t.sink, t.ofSink)));
    return new SurfaceTerms(sinks, all);
  }

  private static void add(
      List<Term> all, List<Sink> sinks, HeatModel model, Block block, Patch patch, double free) {
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
        patch.side(),
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

  /** The first term of all, or the first merged one, at or after a cell. */
  int from(int first, boolean ofMerged) {
    int n = 0;
    while (n < (ofMerged ? cell.length : terms.length)
        && (ofMerged ? cell[n] : terms[n].cell) < first) {
      n++;
    }
    return n;
  }

  /**
   * Lays the tangents at the state at the start of a step.
   *
   * @param from first term
   * @param to term after the last
   */
  void linearise(int from, int to, ThermalMaterial material, double[] enthalpy, double[] theta) {
    for (int n = from; n < to; n++) {
      int m = merged[n];
      if (n == 0 || merged[n - 1] != m) {
        constant[m] = 0;
        perTheta[m] = 0;
      }
      Term t = terms[n];
      if (t.sink < 0 || sinkOn[t.sink] == t.ofSink) {
        double h = enthalpy[t.cell];
        double temp = material.tempC(h);
        double apart = temp - t.exchange.bodyC();
        double k = material.conductivityWPerMmK(h);
        double coefficient = t.exchange.coefficientWPerMm2K(temp);
        double through = 1 + coefficient * t.depthMm / k;
        double conductance = t.areaMm2 * coefficient / through;
        double bend = t.areaMm2 * t.exchange.slopeWPerMm2K2(temp) / (through * through);
        double slope = (conductance + bend * apart) / k;
        constant[m] += conductance * apart - slope * theta[t.cell];
        perTheta[m] += slope;
      }
    }
  }

  /**
   * Takes the heat given off from the cells.
   *
   * @param from first merged term
   * @param to merged term after the last
   * @param theta conductivity integral by cell
   * @param netW power into each cell, from which it is taken
   * @param lostW power by account, set anew
   */
  void take(int from, int to, double[] theta, double[] netW, double[] lostW) {
    // Summed in locals: the halves' accounts lie so near in memory that two cores would quarrel.
    double toAir = 0;
    double toBodies = 0;
    for (int m = from; m < to; m++) {
      int p = cell[m];
      double power = constant[m] + perTheta[m] * theta[p];
      netW[p] -= power;
      if (account[m] == AIR) {
        toAir += power;
      } else {
        toBodies += power;
      }
    }
    lostW[AIR] = toAir;
    lostW[BODIES] = toBodies;
  }

  /** Adds to each cell an upper bound of its conductance to the outside, W/K. */
  void addBound(double[] conductanceWPerK) {
    for (Term t : terms) {
      conductanceWPerK[t.cell] += t.areaMm2 * t.exchange.coefficientWPerMm2K(HOTTEST_C);
    }
  }
}
