package org.counterpull.heat.source;

/**
 * The double-ellipsoid distribution: Gaussian in all directions, longer behind than ahead, fallen
 * to 5 % at the given half axes: {@code q ~ f exp(-3 x^2/c^2 - 3 y^2/a^2 - 3 z^2/b^2)}, with f and
 * c those of the front ahead of the point and those of the rear behind it.
 *
 * <p>The shares of front and rear are {@code f = 2c/(cFront + cRear)}, which makes the density
 * continuous. Metal above the path (the walls beside a fillet) is heated as well as below.
 *
 * <p>Source: J. Goldak, A. Chakravarti, M. Bibby, A New Finite Element Model for Welding Heat
 * Sources, Metallurgical Transactions B 15, 1984, 299-305.
 *
 * @param frontMm half axis ahead
 * @param rearMm half axis behind
 * @param halfWidthMm half axis across
 * @param depthMm half axis into the metal
 */
public record DoubleEllipsoid(double frontMm, double rearMm, double halfWidthMm, double depthMm)
    implements SourceShape {
  private static final double ROOT3 = Math.sqrt(3);

  /** The density at this many half axes is exp(-3 x 1.5^2), 0.1 % of the middle. */
  private static final double REACH = 1.5;

  public DoubleEllipsoid {
    if (!(frontMm > 0 && rearMm > 0 && halfWidthMm > 0 && depthMm > 0)) {
      throw new IllegalArgumentException(
          "half axes must be above 0: "
              + frontMm
              + ", "
              + rearMm
              + ", "
              + halfWidthMm
              + ", "
              + depthMm
              + " mm");
    }
  }

  @Override
  public double shareBehind(double alongMm) {
    double rearShare = rearMm / (frontMm + rearMm);
    if (alongMm < 0) {
      return rearShare * (1 - erf(-ROOT3 * alongMm / rearMm));
    }
    return rearShare + (1 - rearShare) * erf(ROOT3 * alongMm / frontMm);
  }

  @Override
  public double alongPerMm(double alongMm) {
    double half = alongMm < 0 ? rearMm : frontMm;
    double x = alongMm / half;
    return 2 * ROOT3 / (Math.sqrt(Math.PI) * (frontMm + rearMm)) * Math.exp(-3 * x * x);
  }

  @Override
  public double across(double acrossMm, double intoMm) {
    double y = acrossMm / halfWidthMm;
    double z = intoMm / depthMm;
    double square = y * y + z * z;
    return square > REACH * REACH ? 0 : Math.exp(-3 * square);
  }

  @Override
  public double reachAlongMm() {
    return REACH * Math.max(frontMm, rearMm);
  }

  @Override
  public double reachAcrossMm() {
    return REACH * Math.max(halfWidthMm, depthMm);
  }

  @Override
  public double lengthMm() {
    return frontMm + rearMm;
  }

  @Override
  public double detailMm() {
    return 1.5 * Math.min(Math.min(frontMm, rearMm), Math.min(halfWidthMm, depthMm));
  }

  /**
   * Error function of a value that is not negative, to 1.5e-7: M. Abramowitz, I. A. Stegun,
   * Handbook of Mathematical Functions, 1964, 7.1.26. Shares are normalised, so its error moves no
   * energy.
   */
  private static double erf(double x) {
    double t = 1 / (1 + 0.3275911 * x);
    double series =
        t
            * (0.254829592
                + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
    return 1 - series * Math.exp(-x * x);
  }
}
