package org.counterpull.quantity;

import java.util.List;

/**
 * A computed number with its unit, the formula that gave it, and whether that formula may be
 * trusted there.
 *
 * @param value the number
 * @param unit its unit, as printed
 * @param formula name of the {@link Formula}
 * @param warnings one sentence for each limit of validity that was left; empty inside the range
 */
public record Computed(double value, String unit, String formula, List<String> warnings) {

  public Computed {
    warnings = List.copyOf(warnings);
  }

  /** True when no limit of validity was left. */
  public boolean inRange() {
    return warnings.isEmpty();
  }
}
