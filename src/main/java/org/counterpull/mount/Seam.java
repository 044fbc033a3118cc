package org.counterpull.mount;

import java.util.List;
import org.counterpull.heat.block.Vec3;

/**
 * A weld on the outside of the tube, from one place to another: along it, across it, or round it.
 *
 * @param name of the run
 * @param fromZMm start along the tube
 * @param fromRad start around the tube
 * @param toZMm end along the tube
 * @param toRad end around the tube
 * @param passes in the order of welding
 */
public record Seam(
    String name,
    double fromZMm,
    double fromRad,
    double toZMm,
    double toRad,
    List<WeldPass> passes) {
  private static final double PIECE_MM = 4;

  public Seam {
    passes = List.copyOf(passes);
    if (passes.isEmpty()) {
      throw new IllegalArgumentException("weld " + name + " has no pass");
    }
  }

  /** Along the tube, not round it. */
  boolean along() {
    return Math.abs(toRad - fromRad) < 1e-9;
  }

  /** Once round the tube. */
  boolean round() {
    return Math.abs(Math.abs(toRad - fromRad) - 2 * Math.PI) < 1e-6;
  }

  double lengthMm(double radiusMm) {
    return Math.hypot(toZMm - fromZMm, (toRad - fromRad) * radiusMm);
  }

  double zAt(double share) {
    return fromZMm + share * (toZMm - fromZMm);
  }

  double angleAt(double share) {
    return fromRad + share * (toRad - fromRad);
  }

  /** Points along it on a radius, straight from each to the next. */
  List<Vec3> points(double radiusMm) {
    int pieces = along() ? 1 : (int) Math.max(2, Math.ceil(lengthMm(radiusMm) / PIECE_MM));
    return java.util.stream.IntStream.rangeClosed(0, pieces)
        .mapToObj(i -> at((double) i / pieces, radiusMm))
        .toList();
  }

  Vec3 at(double share, double radiusMm) {
    double angle = angleAt(share);
    return new Vec3(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle), zAt(share));
  }

  /** Into the metal: half into the tube, half towards what is welded on. */
  Vec3 into(double share, boolean towardsPartner) {
    double angle = angleAt(share);
    Vec3 inward = new Vec3(-Math.cos(angle), -Math.sin(angle), 0);
    if (!towardsPartner || round()) {
      return inward;
    }
    Vec3 beside =
        along()
            ? new Vec3(Math.sin(angle), -Math.cos(angle), 0).times(Math.signum(angle))
            : new Vec3(0, 0, -Math.signum(fromZMm));
    return inward.plus(beside).unit();
  }

  /** Net heat of all passes, J/mm. */
  double netJPerMm() {
    return passes.stream().mapToDouble(WeldPass::netJPerMm).sum();
  }

  Seam with(List<WeldPass> others) {
    return new Seam(name, fromZMm, fromRad, toZMm, toRad, others);
  }
}
