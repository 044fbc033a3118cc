package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.strength.EffectiveLength;
import org.counterpull.strength.LineWeld;
import org.counterpull.weldment.Joint.Intermittent;

/** The stretches of a weld line that count, as lines of weld. */
final class WeldSlices {
  private WeldSlices() {}

  /**
   * What counts by EN 1993-1-8 4.5.1.
   *
   * @param path where the weld runs
   * @param stitches empty for a weld along the whole path
   * @param throatMm taken off at each open end; 0 where all of it counts
   */
  static List<LineWeld> counted(LinePath path, Optional<Intermittent> stitches, double throatMm) {
    double length = path.lengthMm();
    if (stitches.isEmpty()) {
      return slice(path, 0, length, throatMm, isRing(path) ? 0 : 2);
    }
    double stitch = Math.min(length, stitches.get().lengthMm());
    double pitch = stitches.get().lengthMm() + stitches.get().clearMm();
    List<LineWeld> welds = new ArrayList<>();
    for (double from = 0; from + stitch <= length + 1e-9; from += pitch) {
      welds.addAll(slice(path, from, from + stitch, throatMm, 2));
    }
    return welds;
  }

  /** All of a path. */
  static List<LineWeld> whole(LinePath path) {
    return pieces(path, 0, path.lengthMm());
  }

  private static boolean isRing(LinePath path) {
    return path.start().distance(path.end()) < 1e-6 * path.lengthMm();
  }

  private static List<LineWeld> slice(
      LinePath path, double fromMm, double toMm, double throatMm, int openEnds) {
    if (throatMm == 0) {
      return pieces(path, fromMm, toMm);
    }
    double counted = EffectiveLength.en(toMm - fromMm, throatMm, openEnds).value();
    if (counted <= 0) {
      return List.of();
    }
    double from = fromMm + (toMm - fromMm - counted) / 2;
    return pieces(path, from, from + counted);
  }

  private static List<LineWeld> pieces(LinePath path, double fromMm, double toMm) {
    if (path instanceof LinePath.Straight) {
      return List.of(new LineWeld.Straight(path.at(fromMm), path.at(toMm)));
    }
    if (path instanceof LinePath.Arc arc) {
      double sweep = Math.min(arc.sweepRad(), (toMm - fromMm) / arc.radiusMm());
      Vector3D arm = arc.at(fromMm).subtract(arc.centre());
      return List.of(new LineWeld.Arc(arc.centre(), arc.axis(), arm, sweep));
    }
    int count = Math.max(8, (int) Math.ceil((toMm - fromMm) / 10));
    List<LineWeld> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double step = (toMm - fromMm) / count;
      pieces.add(
          new LineWeld.Straight(path.at(fromMm + i * step), path.at(fromMm + (i + 1) * step)));
    }
    return pieces;
  }
}
