package org.counterpull.heat.face;

import java.util.Optional;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/**
 * Natural convection of still air by the surface's direction to gravity, and radiation.
 *
 * <p>Laminar air, simplified: {@code h = c (dT/L)^(1/4)} with c 1.42 for vertical plates and
 * cylinders, 1.32 for hot plates facing up and for horizontal cylinders, 0.59 for hot plates facing
 * down; L in m. A cold surface changes up and down. Between the named directions the factor is
 * blended with the square of the cosine (own choice; exact at the named directions).
 *
 * <p>Source: from memory: J. P. Holman, Heat Transfer, table 7-2. Valid for laminar flow, about
 * {@code 1e4 < Gr Pr < 1e9}; 7 to 16 % above the Churchill-Chu relation for plates of 0.1 m.
 *
 * @param lengthMm height of a vertical face, or diameter of a horizontal cylinder
 * @param emissivity 0 to 1
 * @param roundAbout axis of a cylinder whose outside this is; empty for flat faces
 */
public record StillAir(double lengthMm, double emissivity, Optional<Vec3> roundAbout)
    implements FaceCondition {
  private static final double VERTICAL = 1.42;
  private static final double FACING_UP = 1.32;
  private static final double FACING_DOWN = 0.59;
  private static final double LYING_CYLINDER = 1.32;

  public StillAir {
    if (!(lengthMm > 0)) {
      throw new IllegalArgumentException("length " + lengthMm + " mm must be positive");
    }
    Emissivity.require(emissivity);
  }

  /** Still air on flat faces. */
  public static StillAir onFlats(double lengthMm, double emissivity) {
    return new StillAir(lengthMm, emissivity, Optional.empty());
  }

  @Override
  public Exchange at(Patch patch, Vec3 up, double ambientC) {
    double perLength = Math.sqrt(Math.sqrt(1000 / lengthMm));
    if (roundAbout.isPresent()) {
      double upright = roundAbout.get().unit().dot(up);
      double factor = blend(VERTICAL, LYING_CYLINDER, 1 - upright * upright) * perLength;
      return new Exchange(ambientC, 0, factor, factor, emissivity);
    }
    double rise = patch.normal().dot(up);
    double hot = blend(VERTICAL, rise > 0 ? FACING_UP : FACING_DOWN, rise * rise);
    double cold = blend(VERTICAL, rise > 0 ? FACING_DOWN : FACING_UP, rise * rise);
    return new Exchange(ambientC, 0, hot * perLength, cold * perLength, emissivity);
  }

  private static double blend(double first, double second, double share) {
    return first + share * (second - first);
  }

  @Override
  public Account account() {
    return Account.AIR;
  }
}
