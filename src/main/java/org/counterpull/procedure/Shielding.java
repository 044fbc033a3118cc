package org.counterpull.procedure;

import org.counterpull.feeding.ShieldingGas;

/**
 * Shielding gas of a procedure.
 *
 * @param name as printed on the plan
 * @param gas composition
 * @param flowLPerMin flow, l/min
 */
public record Shielding(String name, ShieldingGas gas, Range flowLPerMin) {
  public Shielding {
    Checks.inside("gas flow", flowLPerMin, 3, 30, "l/min");
  }
}
