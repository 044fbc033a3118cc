package org.counterpull.zone;

import org.counterpull.quantity.Require;

/** How far the metal goes in one direction from a source: heat is mirrored where it ends. */
public sealed interface Reach {

  /**
   * Share of a unit of heat per mm, after it has spread.
   *
   * @param placeMm from the source
   * @param spreadMm2 4 a t: the square of the width of the spread
   */
  double densityPerMm(double placeMm, double spreadMm2);

  /** The places of the metal that are nearest to the source, as low and high ends, mm. */
  double lowMm();

  /** High end, mm. */
  double highMm();

  /** No end near. */
  record Endless() implements Reach {
    @Override
    public double densityPerMm(double placeMm, double spreadMm2) {
      return Math.exp(-placeMm * placeMm / spreadMm2) / Math.sqrt(Math.PI * spreadMm2);
    }

    @Override
    public double lowMm() {
      return Double.NEGATIVE_INFINITY;
    }

    @Override
    public double highMm() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * Between two faces or edges that lose no heat.
   *
   * @param lowMm place of the one, at or below 0
   * @param highMm place of the other, at or above 0
   */
  record Between(double lowMm, double highMm) implements Reach {
    public Between {
      Require.positive("distance between faces", highMm - lowMm, "mm");
      if (lowMm > 0 || highMm < 0) {
        throw new IllegalArgumentException(
            "the source at 0 mm lies outside " + lowMm + " to " + highMm + " mm");
      }
    }

    @Override
    public double densityPerMm(double placeMm, double spreadMm2) {
      double width = highMm - lowMm;
      return spreadMm2 < width * width
          ? images(placeMm, spreadMm2, width)
          : modes(placeMm, spreadMm2, width);
    }

    private double images(double placeMm, double spreadMm2, double width) {
      double sum = 0;
      for (int k = -MOST; k <= MOST; k++) {
        double direct = placeMm - 2 * k * width;
        double mirrored = placeMm - 2 * highMm - 2 * k * width;
        sum += Math.exp(-direct * direct / spreadMm2) + Math.exp(-mirrored * mirrored / spreadMm2);
      }
      return sum / Math.sqrt(Math.PI * spreadMm2);
    }

    private double modes(double placeMm, double spreadMm2, double width) {
      double sum = 1;
      for (int n = 1; n <= MOST; n++) {
        double wave = n * Math.PI / width;
        sum +=
            2
                * Math.cos(wave * -lowMm)
                * Math.cos(wave * (placeMm - lowMm))
                * Math.exp(-wave * wave * spreadMm2 / 4);
      }
      return sum / width;
    }
  }

  /**
   * Around a closed wall: heat meets itself on the far side.
   *
   * @param girthMm length of the way around
   */
  record Around(double girthMm) implements Reach {
    public Around {
      Require.positive("way around", girthMm, "mm");
    }

    @Override
    public double densityPerMm(double placeMm, double spreadMm2) {
      double sum = 0;
      if (spreadMm2 < girthMm * girthMm / 4) {
        for (int k = -MOST; k <= MOST; k++) {
          double place = placeMm - k * girthMm;
          sum += Math.exp(-place * place / spreadMm2);
        }
        return sum / Math.sqrt(Math.PI * spreadMm2);
      }
      for (int n = 1; n <= MOST; n++) {
        double wave = 2 * n * Math.PI / girthMm;
        sum += 2 * Math.cos(wave * placeMm) * Math.exp(-wave * wave * spreadMm2 / 4);
      }
      return (1 + sum) / girthMm;
    }

    @Override
    public double lowMm() {
      return -girthMm / 2;
    }

    @Override
    public double highMm() {
      return girthMm / 2;
    }
  }

  /** Images or modes on each side: more change nothing in a double. */
  int MOST = 4;
}
