package org.counterpull.heatjob;

import java.util.Locale;
import org.counterpull.heat.solve.Fineness;

/** How finely metal and time are cut. */
public enum Resolution {
  /** For waits: the mean field, not the peaks beside a weld. */
  QUICK(5, 8, 40, 1.6, new Fineness(0.5, 2, 900, 8)),
  COARSE(3, 5, 24, 1.4, Fineness.COARSE),
  NORMAL(2, 3, 16, 1.3, Fineness.NORMAL),
  FINE(1.5, 2, 10, 1.25, Fineness.FINE);

  private final double acrossMm;
  private final double alongMm;
  private final double coarseMm;
  private final double growth;
  private final Fineness fineness;

  Resolution(double acrossMm, double alongMm, double coarseMm, double growth, Fineness fineness) {
    this.acrossMm = acrossMm;
    this.alongMm = alongMm;
    this.coarseMm = coarseMm;
    this.growth = growth;
    this.fineness = fineness;
  }

  /** Cells at a weld, across its line. */
  double acrossMm() {
    return acrossMm;
  }

  /** Cells at a weld, along its line: the arc smears what lies along it. */
  double alongMm() {
    return alongMm;
  }

  /** Largest cell, far from every weld. */
  double coarseMm() {
    return coarseMm;
  }

  /** A cell over its neighbour nearer to the weld. */
  double growth() {
    return growth;
  }

  Fineness fineness() {
    return fineness;
  }

  /** The word used in options and files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
