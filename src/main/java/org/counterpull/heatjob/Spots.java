package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.heat.block.Grading.Zone;
import org.counterpull.space.Frame;

/**
 * Where arcs pass, as points: what decides where cells are fine. In the axes of one part: x along
 * it, and across it either y and z or, for round parts, radius and length around.
 *
 * @param spots each with its coordinates, the direction of travel in them, and how far fine cells
 *     reach
 */
record Spots(List<Spot> spots) {
  private static final double PITCH_MM = 2;
  private static final double ALONG = 0.9;

  record Spot(double[] atMm, double[] direction, double reachMm) {}

  /** Points along lines, in weldment axes. */
  static Spots along(List<WeldedRun> runs) {
    List<Spot> spots = new ArrayList<>();
    for (WeldedRun run : runs) {
      LinePath path = run.path();
      int steps = (int) Math.ceil(path.lengthMm() / PITCH_MM);
      for (int i = 0; i <= steps; i++) {
        double s = path.lengthMm() * i / steps;
        spots.add(new Spot(path.at(s).toArray(), path.tangent(s).toArray(), run.fineReachMm()));
      }
    }
    return new Spots(spots);
  }

  /** The same in the axes of a part. */
  Spots in(Frame frame) {
    return new Spots(
        spots.stream()
            .map(
                s ->
                    new Spot(
                        frame.into(new Vector3D(s.atMm)).toArray(),
                        frame.directionInto(new Vector3D(s.direction)).toArray(),
                        s.reachMm))
            .toList());
  }

  /** From part axes to x, radius and length around at the outside radius. */
  Spots round(double radiusMm) {
    return new Spots(
        spots.stream()
            .map(
                s -> {
                  double y = s.atMm[1];
                  double z = s.atMm[2];
                  double r = Math.max(1e-9, Math.hypot(y, z));
                  double out = (s.direction[1] * y + s.direction[2] * z) / r;
                  double around = (s.direction[2] * y - s.direction[1] * z) / r;
                  return new Spot(
                      new double[] {s.atMm[0], r, Math.atan2(z, y) * radiusMm},
                      new double[] {s.direction[0], out, around},
                      s.reachMm);
                })
            .toList());
  }

  /** Those whose fine cells reach into a box. */
  Spots near(double[] low, double[] high) {
    List<Spot> near = new ArrayList<>();
    for (Spot spot : spots) {
      double square = 0;
      for (int d = 0; d < 3; d++) {
        double beyond = Math.max(0, Math.max(low[d] - spot.atMm[d], spot.atMm[d] - high[d]));
        square += beyond * beyond;
      }
      if (square <= spot.reachMm * spot.reachMm) {
        near.add(spot);
      }
    }
    return new Spots(near);
  }

  /** The same once more a turn on and a turn back, for grids that close on themselves. */
  Spots repeated(int axis, double turnMm) {
    List<Spot> all = new ArrayList<>();
    for (Spot spot : spots) {
      for (int k = -1; k <= 1; k++) {
        double[] at = spot.atMm.clone();
        at[axis] += k * turnMm;
        all.add(new Spot(at, spot.direction, spot.reachMm));
      }
    }
    return new Spots(all);
  }

  /** Stretches with fine cells along an axis, those that touch put together. */
  List<Zone> zones(int axis) {
    List<double[]> stretches = new ArrayList<>();
    for (Spot s : spots) {
      stretches.add(new double[] {s.atMm[axis] - s.reachMm, s.atMm[axis] + s.reachMm});
    }
    stretches.sort(java.util.Comparator.comparingDouble(s -> s[0]));
    List<Zone> zones = new ArrayList<>();
    for (int i = 0; i < stretches.size(); ) {
      double from = stretches.get(i)[0];
      double to = stretches.get(i)[1];
      while (++i < stretches.size() && stretches.get(i)[0] <= to) {
        to = Math.max(to, stretches.get(i)[1]);
      }
      zones.add(new Zone(from, to));
    }
    return zones;
  }

  /** Whether every arc goes along an axis. */
  boolean allAlong(int axis) {
    return spots.stream().allMatch(s -> Math.abs(s.direction[axis]) > ALONG);
  }
}
