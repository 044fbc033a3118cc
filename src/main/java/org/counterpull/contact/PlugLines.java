package org.counterpull.contact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Joint.Holes;

/**
 * The holes of a plug or slot weld: in a row along the middle of the overlap, as many as fit. A
 * round one is welded around half its radius, a slot along its middle; both are reached from the
 * first part's outer face.
 */
final class PlugLines {
  private static final double SAME = 0.99;

  private PlugLines() {}

  /** Empty for other welds, and where the parts do not lie on each other. */
  static List<RawLine> of(Joint joint, JointForm form, List<RawLine> lines) {
    List<RawLine> edges = lines.stream().filter(l -> l.shape() == WeldLine.Shape.FILLET).toList();
    if (joint.holes().isEmpty() || form != JointForm.LAP || edges.isEmpty()) {
      return List.of();
    }
    return normal(edges).map(n -> row(joint.holes().get(), edges, n)).orElse(List.of());
  }

  /** The direction out of the second part's face: one that every edge of the overlap knows. */
  private static Optional<Vector3D> normal(List<RawLine> edges) {
    Corner corner = edges.get(0).middle();
    return List.of(corner.second(), corner.first().negate()).stream()
        .filter(n -> edges.stream().allMatch(edge -> knows(edge.middle(), n)))
        .findFirst();
  }

  private static boolean knows(Corner corner, Vector3D n) {
    return corner.second().dotProduct(n) > SAME || corner.first().negate().dotProduct(n) > SAME;
  }

  private static List<RawLine> row(Holes holes, List<RawLine> edges, Vector3D n) {
    RawLine longest =
        edges.stream().max(Comparator.comparingDouble(e -> e.path().lengthMm())).orElseThrow();
    Vector3D along = longest.path().tangent(longest.path().lengthMm() / 2);
    Vector3D middle = Vector3D.ZERO;
    double all = 0;
    for (RawLine edge : edges) {
      double length = edge.path().lengthMm();
      middle = middle.add(length, edge.path().at(length / 2));
      all += length;
    }
    double raised = longest.firstWallMm();
    Vector3D centre = middle.scalarMultiply(1 / all).add(raised, n);
    double room = longest.path().lengthMm() - holes.lengthMm();
    int fit = Math.min(holes.count(), 1 + (int) Math.floor(Math.max(0, room) / holes.pitchMm()));
    List<RawLine> row = new ArrayList<>();
    for (int i = 0; i < fit; i++) {
      double off = (i - (fit - 1) / 2.0) * holes.pitchMm();
      row.add(line(holes, centre.add(off, along), along, n, longest));
    }
    return row;
  }

  private static RawLine line(
      Holes holes, Vector3D centre, Vector3D along, Vector3D n, RawLine edge) {
    double half = (holes.lengthMm() - holes.widthMm()) / 2;
    LinePath path =
        half > 0
            ? new LinePath.Straight(centre.add(-half, along), centre.add(half, along))
            : new LinePath.Arc(centre, n, along.scalarMultiply(holes.widthMm() / 4), 2 * Math.PI);
    return new RawLine(
        path,
        s -> new Corner(path.at(s), path.tangent(s), n, n),
        180,
        WeldLine.Shape.PLUG,
        n,
        RawLine.Rim.NONE,
        edge.firstWallMm(),
        edge.secondWallMm(),
        Optional.empty(),
        edge.gapMm(),
        false);
  }
}
