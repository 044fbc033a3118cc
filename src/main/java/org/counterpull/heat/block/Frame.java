package org.counterpull.heat.block;

/**
 * A right-handed set of axes in space: where a block lies.
 *
 * @param origin the block's own zero in world coordinates
 * @param ex unit direction of the block's own x
 * @param ey unit direction of its y
 * @param ez unit direction of its z
 */
public record Frame(Vec3 origin, Vec3 ex, Vec3 ey, Vec3 ez) {
  /** Axes of the world itself. */
  public static final Frame WORLD = new Frame(Vec3.ZERO, Vec3.X, Vec3.Y, Vec3.Z);

  private static final double ROUNDING = 1e-9;

  public Frame {
    if (ex.cross(ey).minus(ez).norm() > ROUNDING || Math.abs(ex.norm() - 1) > ROUNDING) {
      throw new IllegalArgumentException("axes must be right-handed, square and of length 1");
    }
  }

  /** Axes with the given x direction, and y as near to the given one as it can be. */
  public static Frame of(Vec3 origin, Vec3 alongX, Vec3 nearY) {
    Vec3 ex = alongX.unit();
    Vec3 ey = nearY.squareTo(ex);
    return new Frame(origin, ex, ey, ex.cross(ey));
  }

  /** Axes with the given z direction and any x and y. */
  public static Frame withZ(Vec3 origin, Vec3 alongZ) {
    Vec3 ez = alongZ.unit();
    Vec3 ex = (Math.abs(ez.x()) < 0.9 ? Vec3.X : Vec3.Y).squareTo(ez);
    return new Frame(origin, ex, ez.cross(ex), ez);
  }

  public Vec3 toWorld(Vec3 local) {
    return origin.plus(directionToWorld(local));
  }

  public Vec3 toLocal(Vec3 world) {
    return directionToLocal(world.minus(origin));
  }

  public Vec3 directionToWorld(Vec3 local) {
    return ex.times(local.x()).plus(ey.times(local.y())).plus(ez.times(local.z()));
  }

  public Vec3 directionToLocal(Vec3 world) {
    return new Vec3(world.dot(ex), world.dot(ey), world.dot(ez));
  }
}
