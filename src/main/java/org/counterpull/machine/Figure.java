package org.counterpull.machine;

import org.counterpull.quantity.Computed;

/**
 * A number that a gate was judged by.
 *
 * @param name what it is
 * @param value the number
 * @param unit its unit
 */
public record Figure(String name, double value, String unit) {
  /** A figure that a published formula gave. */
  public static Figure of(String name, Computed computed) {
    return new Figure(name, computed.value(), computed.unit());
  }
}
