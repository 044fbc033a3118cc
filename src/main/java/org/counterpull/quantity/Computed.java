package org.counterpull.quantity;

import java.util.List;

/**
 * A computed number with the formula that gave it, and whether that formula may be trusted there.
 *
 * @param value the number, in {@link #unit()}
 * @param formula where it comes from: name, meaning, unit, source
 * @param warnings one sentence for each limit of validity that was left; empty inside the range
 */
public record Computed(double value, Formula formula, List<String> warnings) {

  public Computed {
    warnings = List.copyOf(warnings);
  }

  /** Unit of the value, as printed. */
  public String unit() {
    return formula.unit();
  }

  /** True when no limit of validity was left. */
  public boolean inRange() {
    return warnings.isEmpty();
  }
}
