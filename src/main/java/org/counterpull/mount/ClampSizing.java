package org.counterpull.mount;

import java.util.Optional;
import org.counterpull.fit.ThickTube;

/**
 * Finds bolts and length of a clamp of two halves: friction on both halves carries the load along
 * the tube, and the pressure moves the bore by no more than a third of its band.
 */
final class ClampSizing {
  private static final int[] SIZES = {8, 10, 12, 16, 20};

  /** Stress areas, mm2: ISO 898-1, coarse thread, from memory. */
  private static final double[] STRESS_MM2 = {36.6, 58.0, 84.3, 157, 245};

  private static final double PRELOAD = 0.7;
  private static final int MOST_BOLTS = 8;
  private static final double STEP_MM = 5;
  private static final double LONGEST_DIAMETERS = 4;

  private ClampSizing() {}

  /**
   * A clamp.
   *
   * @param lengthMm along the tube
   * @param bolts how many, half on either side
   * @param size thread M
   * @param preloadN wanted in each bolt
   * @param pressureMPa on the tube
   * @param squeezeMm of the bore, on diameter
   */
  record Sized(
      double lengthMm,
      int bolts,
      int size,
      double preloadN,
      double pressureMPa,
      double squeezeMm) {}

  /** The shortest clamp that does it; empty where none does. */
  static Optional<Sized> of(BoredTube tube, double designN, double allowedMm) {
    double wanted = designN * ShopValue.of("slip safety") / (2 * ShopValue.of("slip factor"));
    for (int bolts = 2; bolts <= MOST_BOLTS; bolts += 2) {
      for (int i = 0; i < SIZES.length; i++) {
        double each = PRELOAD * ShopValue.of("bolt tensile") * STRESS_MM2[i];
        if (bolts * each >= wanted && 2 * SIZES[i] <= tube.outsideMm() / 2) {
          return length(tube, wanted, allowedMm, bolts, SIZES[i]);
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<Sized> length(
      BoredTube tube, double wantedN, double allowedMm, int bolts, int size) {
    double longest = LONGEST_DIAMETERS * tube.outsideMm();
    double least = Math.max(tube.outsideMm() / 2, bolts / 2 * 3.0 * size);
    for (double length = STEP_MM * Math.ceil(least / STEP_MM);
        length <= longest;
        length += STEP_MM) {
      double pressure = wantedN / (tube.outsideMm() * length);
      double squeeze = ThickTube.squeeze(tube.insideMm(), tube.outsideMm(), pressure).value();
      if (squeeze <= allowedMm) {
        return Optional.of(new Sized(length, bolts, size, wantedN / bolts, pressure, squeeze));
      }
    }
    return Optional.empty();
  }
}
