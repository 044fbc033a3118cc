package org.counterpull.heat.face;

import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/** A surface that gives off nothing: a plane of symmetry, or a thought experiment. */
public record Insulated() implements FaceCondition {

  @Override
  public Exchange at(Patch patch, Vec3 up, double ambientC) {
    return Exchange.NONE;
  }

  @Override
  public Account account() {
    return Account.AIR;
  }
}
