package org.counterpull.verification;

import org.counterpull.quantity.Computed;
import org.counterpull.registry.FormulaRegistry;

/** One check, worked. */
record Worked(Family family, PublishedCase published, double value, String unit) {

  static Worked of(Family family, PublishedCase published) {
    double scale = family.scale() == null ? 1 : family.scale();
    if (family.formula() == null) {
      double solved = SolvedCases.solve(family.solved(), published.arguments());
      return new Worked(family, published, scale * solved, family.unit());
    }
    Computed ours =
        FormulaRegistry.find(family.formula())
            .orElseThrow()
            .evaluate(published.arguments())
            .result();
    String unit = family.unit() == null ? ours.unit() : family.unit();
    return new Worked(family, published, scale * ours.value(), unit);
  }

  double expected() {
    return Double.parseDouble(published.expected());
  }

  /** The print itself was rounded from a double: its last bits are allowed on top. */
  double tolerance() {
    return published.tolerance();
  }

  String source() {
    return published.source() == null ? family.source() : published.source();
  }

  String certainty() {
    return published.certainty() == null ? family.certainty() : published.certainty();
  }

  @Override
  public String toString() {
    return family.family() + " " + family.name() + " " + published.arguments();
  }
}
