package org.counterpull.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.special.Erf;
import org.counterpull.quantity.Require;

/**
 * Peak temperatures beside a run whose heat is put in at once along its line, with mirror images at
 * faces, edges and ends.
 *
 * <p>Rise = Q / c times the share of the heat per mm2 of section, T(t, n, b) = Q / c A(n) B(b) with
 * A and B of {@link Reach}; beside a run of finite length times the share that it reaches, 0.5
 * (erf(t / w) - erf((t - L) / w)), w2 = 4 a t, mirrored at ends of the metal. The highest rise over
 * time doesn't depend on the conductivity.
 *
 * <p>Source: N. N. Rykalin, Berechnung der Wärmevorgänge beim Schweißen, 1957; the images from H.
 * S. Carslaw and J. C. Jaeger. Valid for: arcs that pass faster than the heat spreads, constant
 * properties, faces without loss; beside the molten metal, not in it.
 */
public final class LinePeaks {
  private static final int LEAST_LAYERS = 12;
  private static final int CELLS_IN_ZONE = 14;
  private static final double GROWTH = 0.06;
  private static final int SCANNED = 24;
  private static final int GOLDEN_STEPS = 12;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double TWO_OVER_ROOT_TWO_PI_E = 2 / Math.sqrt(2 * Math.PI * Math.E);

  private final double heatMm2K;
  private final double startC;
  private final Reach across;
  private final Reach.Between depth;
  private final Optional<Ends> ends;

  /**
   * A run of finite length.
   *
   * @param lengthMm length of the run
   * @param beforeMm metal before its start; infinite for no end near
   * @param afterMm metal behind its stop; infinite for no end near
   */
  public record Ends(double lengthMm, double beforeMm, double afterMm) {
    public Ends {
      Require.positive("length", lengthMm, "mm");
      if (!(beforeMm >= 0 && afterMm >= 0)) {
        throw new IllegalArgumentException(
            "metal of " + beforeMm + " and " + afterMm + " mm beyond a run of " + lengthMm);
      }
    }
  }

  /**
   * A field.
   *
   * @param netHeatJPerMm net heat into this wall
   * @param heatCapacityJPerMm3K heat capacity by volume
   * @param startC temperature before welding
   * @param across how far the wall goes on both sides of the run
   * @param depth faces of the wall on the run's b axis: such as -h to 0
   * @param ends of a short run; empty for a long one
   */
  public LinePeaks(
      double netHeatJPerMm,
      double heatCapacityJPerMm3K,
      double startC,
      Reach across,
      Reach.Between depth,
      Optional<Ends> ends) {
    Require.positive("net heat", netHeatJPerMm, "J/mm");
    Require.positive("heat capacity", heatCapacityJPerMm3K, "J/mm3K");
    this.heatMm2K = netHeatJPerMm / heatCapacityJPerMm3K;
    this.startC = startC;
    this.across = across;
    this.depth = depth;
    this.ends = ends;
  }

  /** Peak temperature at a place, deg C. */
  public double peakC(double tMm, double nMm, double bMm) {
    double distance = Math.max(1e-6, Math.hypot(nMm, bMm) + outside(tMm));
    double low = 2 * Math.log(0.05 * distance);
    double high = 2 * Math.log(20 * Math.max(distance, widest()));
    double best = low;
    double most = 0;
    double step = (high - low) / SCANNED;
    for (int i = 0; i <= SCANNED; i++) {
      double rise = riseK(tMm, nMm, bMm, low + i * step);
      if (rise > most) {
        most = rise;
        best = low + i * step;
      }
    }
    return startC + Math.max(most, refined(tMm, nMm, bMm, best - step, best + step));
  }

  private double refined(double tMm, double nMm, double bMm, double from, double to) {
    double a = from;
    double b = to;
    for (int i = 0; i < GOLDEN_STEPS; i++) {
      double c = b - GOLDEN * (b - a);
      double d = a + GOLDEN * (b - a);
      if (riseK(tMm, nMm, bMm, c) > riseK(tMm, nMm, bMm, d)) {
        b = d;
      } else {
        a = c;
      }
    }
    return riseK(tMm, nMm, bMm, (a + b) / 2);
  }

  private double riseK(double tMm, double nMm, double bMm, double logSpread) {
    double spread = Math.exp(logSpread);
    return heatMm2K
        * across.densityPerMm(nMm, spread)
        * depth.densityPerMm(bMm, spread)
        * alongAt(tMm, spread);
  }

  /** The run and its images behind both ends of the metal. */
  private static double along(Ends run, double tMm, double width) {
    double sum = reached(tMm, 0, run.lengthMm(), width);
    if (Double.isFinite(run.beforeMm())) {
      double mirror = -2 * run.beforeMm();
      sum += reached(tMm, mirror - run.lengthMm(), mirror, width);
    }
    if (Double.isFinite(run.afterMm())) {
      double mirror = 2 * (run.lengthMm() + run.afterMm());
      sum += reached(tMm, mirror - run.lengthMm(), mirror, width);
    }
    return sum;
  }

  private static double reached(double tMm, double fromMm, double toMm, double width) {
    return 0.5 * (Erf.erf((tMm - fromMm) / width) - Erf.erf((tMm - toMm) / width));
  }

  private double outside(double tMm) {
    return ends.map(e -> Math.max(0, Math.max(-tMm, tMm - e.lengthMm()))).orElse(0.0);
  }

  private double widest() {
    double width = depth.highMm() - depth.lowMm();
    return across instanceof Reach.Endless ? width : across.highMm() - across.lowMm() + width;
  }

  /**
   * The metal around the run in cells, small in the zone that shrinks and wider away from it.
   *
   * @param outToRiseK how far out: to where heat that has gone through the wall makes it so warm
   */
  public List<PeakCell> cells(double outToRiseK) {
    double h = depth.highMm() - depth.lowMm();
    double zoneMm =
        Math.sqrt(2 * heatMm2K / (Math.PI * Math.E * (ZoneRule.SHRINKS_FROM_C - startC)));
    double cell = Math.min(h / LEAST_LAYERS, zoneMm / CELLS_IN_ZONE);
    double out =
        Math.max(
            4 * Math.min(h, zoneMm),
            1.3 * TWO_OVER_ROOT_TWO_PI_E / 2 * heatMm2K / (h * outToRiseK));
    List<double[]> columns = bothSides(cell, out, across.lowMm(), across.highMm());
    List<double[]> layers = bothSides(cell, h, depth.lowMm(), depth.highMm());
    List<double[]> slices = slices(cell, out);
    Spreads spreads = new Spreads(cell, out + widest() + ends.map(Ends::lengthMm).orElse(0.0));
    double[][] acrossAt = spreads.table(columns, across::densityPerMm);
    double[][] depthAt = spreads.table(layers, depth::densityPerMm);
    double[][] alongAt = spreads.table(slices, this::alongAt);
    List<PeakCell> cells = new ArrayList<>(slices.size() * columns.size() * layers.size());
    for (int i = 0; i < slices.size(); i++) {
      for (int j = 0; j < columns.size(); j++) {
        double[] both = Spreads.product(alongAt[i], acrossAt[j]);
        for (int k = 0; k < layers.size(); k++) {
          cells.add(
              new PeakCell(
                  slices.get(i)[0],
                  columns.get(j)[0],
                  layers.get(k)[0],
                  slices.get(i)[1] * columns.get(j)[1] * layers.get(k)[1],
                  startC + heatMm2K * Spreads.peak(both, depthAt[k])));
        }
      }
    }
    return cells;
  }

  private double alongAt(double tMm, double spreadMm2) {
    return ends.map(e -> along(e, tMm, Math.sqrt(spreadMm2))).orElse(1.0);
  }

  /** Middles and widths from the run to both ends of the metal, or as far out as it matters. */
  private static List<double[]> bothSides(double cell, double out, double low, double high) {
    List<double[]> pieces = new ArrayList<>(side(cell, Math.min(out, high), 1));
    pieces.addAll(side(cell, Math.min(out, -low), -1));
    return pieces;
  }

  private static List<double[]> side(double cell, double out, int sign) {
    List<double[]> columns = new ArrayList<>();
    double at = 0;
    while (at < out - 1e-9) {
      double width = Math.min(Math.max(cell, GROWTH * at), out - at);
      columns.add(new double[] {sign * (at + width / 2), width});
      at += width;
    }
    return columns;
  }

  /** One slice of 1 mm of a long run, or the whole length around a short one. */
  private List<double[]> slices(double cell, double out) {
    if (ends.isEmpty()) {
      return List.of(new double[] {0, 1});
    }
    Ends run = ends.get();
    List<double[]> slices = new ArrayList<>();
    double half = run.lengthMm() / 2;
    for (int sign : new int[] {-1, 1}) {
      double beyond = sign < 0 ? run.beforeMm() : run.afterMm();
      for (double[] slice : side(2 * cell, half + Math.min(out, beyond), sign)) {
        slices.add(new double[] {half + slice[0], slice[1]});
      }
    }
    return slices;
  }
}
