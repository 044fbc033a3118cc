package org.counterpull.swing;

import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Swing;

/**
 * Room on each side of a cylinder's barrel over the swing, for its ports and hoses: a probe goes
 * straight out from the barrel until it meets a part.
 */
final class BarrelRoom {
  private static final double FARTHEST_MM = 300;
  private static final double STEP_MM = 5;

  /** Radius of a hose with its fitting, mm: common practice, no source. */
  private static final double HOSE_MM = 15;

  private static final List<String> SIDES =
      List.of(
          "side that looks along the hinge axis",
          "side that looks against the hinge axis",
          "side away from the hinge",
          "side towards the hinge");

  private BarrelRoom() {}

  static SwingResult.Ports of(
      Turning turning,
      Swing.Cylinder cylinder,
      Map<String, Solid> solids,
      List<String> moving,
      List<Double> angles) {
    double[] room = new double[SIDES.size()];
    java.util.Arrays.fill(room, FARTHEST_MM);
    for (double deg : angles) {
      Vector3D foot = cylinder.fixedAt();
      Vector3D head = turning.point(cylinder.movingAt(), deg);
      Vector3D along = head.subtract(foot).normalize();
      Vector3D middle = foot.add(cylinder.closedMm() / 2, along);
      Vector3D out = along.crossProduct(turning.axis()).normalize();
      Vector3D fromHinge = middle.subtract(turning.at());
      Vector3D away = out.dotProduct(fromHinge) >= 0 ? out : out.negate();
      List<Vector3D> ways = List.of(turning.axis(), turning.axis().negate(), away, away.negate());
      List<Solid> here =
          solids.entrySet().stream()
              .map(
                  e ->
                      moving.contains(e.getKey()) ? turning.solid(e.getValue(), deg) : e.getValue())
              .toList();
      for (int i = 0; i < room.length; i++) {
        double skin = cylinder.boreMm() * BarrelClash.BARREL / 2;
        room[i] = Math.min(room[i], free(middle, ways.get(i), skin, here));
      }
    }
    int best = 0;
    int worst = 0;
    for (int i = 1; i < room.length; i++) {
      best = room[i] > room[best] ? i : best;
      worst = room[i] < room[worst] ? i : worst;
    }
    return new SwingResult.Ports(SIDES.get(best), room[best], SIDES.get(worst), room[worst]);
  }

  private static double free(Vector3D from, Vector3D way, double skinMm, List<Solid> solids) {
    for (double out = 0; out < FARTHEST_MM; out += STEP_MM) {
      Vector3D probe = from.add(skinMm + out + HOSE_MM, way);
      boolean meets =
          solids.stream()
              .anyMatch(s -> s.box().distance(probe) < HOSE_MM && s.distance(probe) < HOSE_MM);
      if (meets) {
        return out;
      }
    }
    return FARTHEST_MM;
  }
}
