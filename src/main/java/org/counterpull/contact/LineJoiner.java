package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** Joins pieces that are one line at the bench: chords of a curve, and straight neighbours. */
final class LineJoiner {
  private static final double NEAR_MM = 0.01;

  private LineJoiner() {}

  static List<RawLine> joined(List<RawLine> lines) {
    List<RawLine> left = new ArrayList<>(lines);
    boolean again = true;
    while (again) {
      again = false;
      for (int i = 0; i < left.size() && !again; i++) {
        for (int j = i + 1; j < left.size() && !again; j++) {
          Optional<RawLine> one = join(left.get(i), left.get(j));
          if (one.isPresent()) {
            left.set(i, one.get());
            left.remove(j);
            again = true;
          }
        }
      }
    }
    return left;
  }

  private static Optional<RawLine> join(RawLine a, RawLine b) {
    if (!alike(a, b)) {
      return Optional.empty();
    }
    if (a.chord() && b.chord()) {
      return curve(a, b).or(() -> curve(b, a));
    }
    if (a.path() instanceof LinePath.Straight p
        && b.path() instanceof LinePath.Straight q
        && a.rim() == b.rim()
        && Math.abs(a.dihedralDeg() - b.dihedralDeg()) < 0.5) {
      return straight(a, p, q);
    }
    return Optional.empty();
  }

  private static boolean alike(RawLine a, RawLine b) {
    return a.shape() == b.shape()
        && a.chord() == b.chord()
        && a.rim() == b.rim()
        && Math.abs(a.firstWallMm() - b.firstWallMm()) < NEAR_MM
        && Math.abs(a.secondWallMm() - b.secondWallMm()) < NEAR_MM
        && Math.abs(a.gapMm() - b.gapMm()) < 0.05;
  }

  private static Optional<RawLine> straight(RawLine a, LinePath.Straight p, LinePath.Straight q) {
    Vector3D along = p.tangent(0);
    double[] own = {0, p.lengthMm()};
    double[] other = new double[2];
    Vector3D[] ends = {q.start(), q.end()};
    for (int i = 0; i < ends.length; i++) {
      Vector3D arm = ends[i].subtract(p.start());
      other[i] = arm.dotProduct(along);
      if (arm.crossProduct(along).getNorm() > NEAR_MM) {
        return Optional.empty();
      }
    }
    double low = Math.min(other[0], other[1]);
    double high = Math.max(other[0], other[1]);
    boolean follows = Math.abs(low - own[1]) < NEAR_MM || Math.abs(high - own[0]) < NEAR_MM;
    if (!follows) {
      return Optional.empty();
    }
    Vector3D start = p.start().add(Math.min(0, low), along);
    Vector3D end = p.start().add(Math.max(own[1], high), along);
    LinePath.Straight whole = new LinePath.Straight(start, end);
    Corner corner = a.corners().apply(0);
    Vector3D offset = corner.tip().subtract(p.start());
    Corner moved = corner.at(start.add(offset), along);
    return Optional.of(RawLine.straight(whole, moved, a));
  }

  private static Optional<RawLine> curve(RawLine a, RawLine b) {
    List<Vector3D> head = points(a.path());
    List<Vector3D> tail = points(b.path());
    if (head.get(head.size() - 1).distance(tail.get(0)) > NEAR_MM) {
      return Optional.empty();
    }
    List<Vector3D> all = new ArrayList<>(head);
    all.addAll(tail.subList(1, tail.size()));
    LinePath.Curve path = new LinePath.Curve(all);
    double first = a.path().lengthMm();
    double last = b.path().lengthMm();
    return Optional.of(
        a.along(
            path,
            s -> s <= first ? a.corners().apply(s) : b.corners().apply(Math.min(last, s - first))));
  }

  private static List<Vector3D> points(LinePath path) {
    return path instanceof LinePath.Curve curve
        ? curve.points()
        : List.of(path.start(), path.end());
  }
}
