package org.counterpull.heat.superposed;

/**
 * Temperatures for which a model is made linear.
 *
 * @param lowC metals get their mean properties from here
 * @param highC to here
 * @param filmAtC films and radiation are held as they are at this surface temperature
 */
public record LinearRange(double lowC, double highC, double filmAtC) {

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
