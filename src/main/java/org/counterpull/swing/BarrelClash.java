package org.counterpull.swing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Solid;
import org.counterpull.swing.SwingResult.Clash;
import org.counterpull.weldment.Swing;

/** Where a cylinder first comes into a part; within one and a half bores of its pins it may. */
final class BarrelClash {
  /** Outside of a barrel over its bore: common practice, no source. */
  static final double BARREL = 1.2;

  private static final double AT_THE_EYES = 1.5;
  private static final int LOOKS = 60;

  private BarrelClash() {}

  static Optional<Clash> of(
      Turning turning,
      Swing swing,
      Swing.Cylinder cylinder,
      Map<String, Solid> solids,
      List<String> moving) {
    for (int i = 0; i <= LOOKS; i++) {
      double deg = swing.fromDeg() + (swing.toDeg() - swing.fromDeg()) * i / LOOKS;
      for (Map.Entry<String, Solid> entry : solids.entrySet()) {
        boolean turns = moving.contains(entry.getKey());
        Solid here = turns ? turning.solid(entry.getValue(), deg) : entry.getValue();
        if (meets(cylinder, turning.point(cylinder.movingAt(), deg), here)) {
          return Optional.of(new Clash("cylinder", entry.getKey(), deg));
        }
      }
    }
    return Optional.empty();
  }

  /** The barrel is at the fixed pin; beyond it goes the rod. */
  private static boolean meets(Swing.Cylinder cylinder, Vector3D head, Solid solid) {
    Vector3D foot = cylinder.fixedAt();
    Vector3D along = head.subtract(foot).normalize();
    double barrelMm = Math.min(cylinder.closedMm(), head.distance(foot));
    double free = AT_THE_EYES * cylinder.boreMm();
    for (double at = free; at < head.distance(foot) - free; at += cylinder.rodMm() / 2) {
      double radius = at < barrelMm - free ? BARREL * cylinder.boreMm() / 2 : cylinder.rodMm() / 2;
      Vector3D point = foot.add(at, along);
      if (solid.box().distance(point) < radius && solid.distance(point) < radius) {
        return true;
      }
    }
    return false;
  }
}
