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
   * @param throatMm taken off at each open end
   */
  static List<LineWeld> counted(LinePath path, Optional<Intermittent> stitches, double throatMm) {
    int openEnds = stitches.isEmpty() && isRing(path) ? 0 : 2;
    List<LineWeld> welds = new ArrayList<>();
    for (Stretch stretch : stretches(path, stitches)) {
      double length = stretch.toMm - stretch.fromMm;
      double counted = EffectiveLength.en(length, throatMm, openEnds).value();
      if (counted > 0) {
        double from = stretch.fromMm + (length - counted) / 2;
        welds.addAll(pieces(path, from, from + counted));
      }
    }
    return welds;
  }

  /**
   * What AISC 360 J2.2b counts at its full leg: stretches of four legs and more. A shorter one
   * would count with a quarter of its length for a leg; it is left out, on the safe side.
   */
  static List<LineWeld> ofFourLegs(LinePath path, Optional<Intermittent> stitches, double legMm) {
    return stretches(path, stitches).stream()
        .filter(s -> s.toMm - s.fromMm >= 4 * legMm - 1e-9)
        .flatMap(s -> pieces(path, s.fromMm, s.toMm).stream())
        .toList();
  }

  /** All of a weld. */
  static List<LineWeld> whole(LinePath path, Optional<Intermittent> stitches) {
    return stretches(path, stitches).stream()
        .flatMap(s -> pieces(path, s.fromMm, s.toMm).stream())
        .toList();
  }

  /** A stretch that is welded without a break. */
  private record Stretch(double fromMm, double toMm) {}

  private static List<Stretch> stretches(LinePath path, Optional<Intermittent> stitches) {
    double length = path.lengthMm();
    if (stitches.isEmpty()) {
      return List.of(new Stretch(0, length));
    }
    double stitch = Math.min(length, stitches.get().lengthMm());
    double pitch = stitches.get().lengthMm() + stitches.get().clearMm();
    List<Stretch> stretches = new ArrayList<>();
    for (double from = 0; from + stitch <= length + 1e-9; from += pitch) {
      stretches.add(new Stretch(from, Math.min(length, from + stitch)));
    }
    return stretches;
  }

  private static boolean isRing(LinePath path) {
    return path.start().distance(path.end()) < 1e-6 * path.lengthMm();
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
