package org.counterpull.heat.superposed;

import java.util.Optional;

/**
 * Temperatures for which a model is made linear.
 *
 * @param lowC metals get their mean properties from here
 * @param highC to here
 * @param filmAtC films and radiation are held as they are at this surface temperature
 * @param restC when given, metals keep their tables, and the copy rests at this temperature before
 *     a run: linear about warm work, apart from the heat of the run itself
 */
public record LinearRange(double lowC, double highC, double filmAtC, Optional<Double> restC) {

  /** Metals by their means. */
  public LinearRange(double lowC, double highC, double filmAtC) {
    this(lowC, highC, filmAtC, Optional.empty());
  }

  public LinearRange {
    if (!(highC > lowC && filmAtC >= lowC)) {
      throw new IllegalArgumentException(
          "cannot make linear from "
              + lowC
              + " to "
              + highC
              + " C with films at "
              + filmAtC
              + " C");
    }
  }

  /** Films are held no nearer to the air than this: a cooling part was hotter than its limit. */
  private static final double LEAST_FILM_RISE_K = 55;

  /**
   * About warm work, with its films held at a temperature: metals by their tables, so that the
   * first hot half minute is right as well.
   *
   * <p>The copy rests at a third of the way to the limit (own choice: between the first run on cold
   * work and the last on work that is near the limit).
   */
  public static LinearRange aboutWarmWork(double ambientC, double limitC, double filmAtC) {
    double rest = ambientC + (limitC - ambientC) / 3;
    return new LinearRange(ambientC, limitC, filmAtC, Optional.of(rest));
  }

  /**
   * A range that serves waits for an interpass limit: metals by their means up to the limit, films
   * at three quarters of the way there, but at 55 K over the air or more.
   *
   * <p>Own choice, by comparison with the full model on a lug on a bar: waits for limits of 65 to
   * 150 C come out within 10 % or 5 s. Means over hotter ranges make waits too short, because the
   * hot part of the cooling is over soon and the long rest happens near the limit.
   */
  public static LinearRange forInterpass(double ambientC, double limitC) {
    double film = Math.max(0.75 * (limitC - ambientC), LEAST_FILM_RISE_K);
    return new LinearRange(ambientC, limitC, ambientC + film);
  }
}
