package org.counterpull.heat.face;

import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/**
 * A given film coefficient, with radiation or without.
 *
 * @param filmWPerM2K coefficient of convection, not negative
 * @param emissivity 0 to 1; 0 when radiation is in the film already
 */
public record FixedFilm(double filmWPerM2K, double emissivity) implements FaceCondition {

  public FixedFilm {
    if (!(filmWPerM2K >= 0) || Double.isInfinite(filmWPerM2K)) {
      throw new IllegalArgumentException("film " + filmWPerM2K + " W/m2K must not be negative");
    }
    Emissivity.require(emissivity);
  }

  @Override
  public Exchange at(Patch patch, Vec3 up, double ambientC) {
    return new Exchange(ambientC, filmWPerM2K, 0, 0, emissivity);
  }

  @Override
  public Account account() {
    return Account.AIR;
  }
}
