package org.counterpull.plan;

import java.util.List;

/**
 * The cutting list.
 *
 * @param cuts equal pieces together
 * @param bars how they are laid into bars, one for each stock and grade; plate is not packed
 */
public record CutList(List<Cut> cuts, List<Bars> bars) {
  /** Nothing to cut. */
  public static final CutList EMPTY = new CutList(List.of(), List.of());

  public CutList {
    cuts = List.copyOf(cuts);
    bars = List.copyOf(bars);
  }

  /**
   * Equal pieces.
   *
   * @param stock as described
   * @param steel grade
   * @param parts names
   * @param drawnMm length in the file
   * @param gapMm taken off for root gaps that aren't drawn
   * @param shrinkageMm added for what butt welds pull in
   * @param cutMm length to cut
   * @param kg mass of one
   */
  public record Cut(
      String stock,
      String steel,
      List<String> parts,
      double drawnMm,
      double gapMm,
      double shrinkageMm,
      double cutMm,
      double kg) {
    public Cut {
      parts = List.copyOf(parts);
    }

    /** The same for named parts. */
    public Cut of(List<String> names) {
      return new Cut(stock, steel, names, drawnMm, gapMm, shrinkageMm, cutMm, kg);
    }
  }

  /**
   * Bars to buy.
   *
   * @param stock as described
   * @param steel grade
   * @param barMm length of each
   * @param kerfMm what a saw cut takes
   * @param lengthsMm what is cut from each bar
   * @param tooLongMm pieces longer than a bar, to be ordered to length
   * @param leastPossible no way with fewer bars exists
   * @param kg mass bought
   */
  public record Bars(
      String stock,
      String steel,
      double barMm,
      double kerfMm,
      List<List<Double>> lengthsMm,
      List<Double> tooLongMm,
      boolean leastPossible,
      double kg) {
    public Bars {
      lengthsMm = lengthsMm.stream().map(List::copyOf).toList();
      tooLongMm = List.copyOf(tooLongMm);
    }

    /** What is left of a bar, mm. */
    public double restMm(int bar) {
      List<Double> cut = lengthsMm.get(bar);
      double used = cut.stream().mapToDouble(Double::doubleValue).sum();
      return Math.max(0, barMm - used - kerfMm * cut.size());
    }
  }
}
