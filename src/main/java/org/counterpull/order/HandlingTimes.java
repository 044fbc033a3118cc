package org.counterpull.order;

/** How long it takes to bring the work under the torch. */
public final class HandlingTimes {
  private HandlingTimes() {}

  /** Turning the weldment over or standing it on an edge, s. */
  public static double turnOverS() {
    return BenchTimes.value("turn over");
  }

  /** Taking it to another place, s. */
  public static double moveS() {
    return BenchTimes.value("move");
  }
}
