package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;

/** Points along a run's line on each of its parts: where its interpass temperature is read. */
record RunLine(List<Point> points) {

  /** A point of a block of metal. */
  record Point(Block block, Vec3 at) {}

  /** So many points on each part, ends included. */
  static RunLine of(Layout layout, WeldedRun run, int samples) {
    List<Point> points = new ArrayList<>();
    for (String part : run.parts()) {
      for (int i = 0; i < samples; i++) {
        Vec3 at = Axes.point(run.path().at(run.path().lengthMm() * i / (samples - 1)));
        points.add(new Point(layout.nearest(part, at), at));
      }
    }
    return new RunLine(List.copyOf(points));
  }
}
