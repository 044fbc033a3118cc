package org.counterpull.order;

/** Rounds a wait up to what is read off a watch. */
public final class ReadableWait {
  private static final double SHORT_S = 60;
  private static final double MIDDLE_S = 600;
  private static final double LONG_S = 7200;
  private static final double ROUNDING_S = 0.01;

  private ReadableWait() {}

  /** Up to a minute by 5 s, up to ten by 15 s, up to two hours by the minute, then by 6 min. */
  public static double of(double seconds) {
    if (seconds <= ROUNDING_S) {
      return 0;
    }
    double unit = seconds <= SHORT_S ? 5 : seconds <= MIDDLE_S ? 15 : seconds <= LONG_S ? 60 : 360;
    return unit * Math.ceil((seconds - ROUNDING_S) / unit);
  }
}
