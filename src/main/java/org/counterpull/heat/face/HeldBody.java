package org.counterpull.heat.face;

import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/**
 * Contact with something that keeps its temperature: table, clamp, copper block, wet rag, a jet of
 * air.
 *
 * @param conductanceWPerM2K of the contact, not negative
 * @param bodyC temperature that the body holds
 */
public record HeldBody(double conductanceWPerM2K, double bodyC) implements FaceCondition {

  public HeldBody {
    if (!(conductanceWPerM2K >= 0) || Double.isInfinite(conductanceWPerM2K)) {
      throw new IllegalArgumentException(
          "contact conductance " + conductanceWPerM2K + " W/m2K must not be negative");
    }
    if (!Double.isFinite(bodyC)) {
      throw new IllegalArgumentException("temperature of the body: " + bodyC + " C");
    }
  }

  @Override
  public Exchange at(Patch patch, Vec3 up, double ambientC) {
    return new Exchange(bodyC, conductanceWPerM2K, 0, 0, 0);
  }

  @Override
  public Account account() {
    return Account.BODIES;
  }
}
