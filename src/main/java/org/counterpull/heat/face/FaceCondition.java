package org.counterpull.heat.face;

import org.counterpull.heat.block.Patch;
import org.counterpull.heat.block.Vec3;

/** What lies on the outside of a surface. */
public sealed interface FaceCondition
    permits Insulated, FixedFilm, StillAir, HeldBody, TangentFilm {

  /**
   * Prepares the condition for one patch.
   *
   * @param patch the piece of surface
   * @param up unit direction against gravity
   * @param ambientC temperature of the air and of what it radiates to
   */
  Exchange at(Patch patch, Vec3 up, double ambientC);

  /** To which account of the energy balance its heat goes. */
  Account account();

  /** Accounts of heat that leaves the metal. */
  enum Account {
    /** To the air, by convection and radiation. */
    AIR,
    /** To bodies that hold their temperature. */
    BODIES
  }
}
