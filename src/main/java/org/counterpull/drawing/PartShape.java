package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.Section;
import org.counterpull.solid.Solid;
import org.counterpull.space.Face;
import org.counterpull.space.Frame;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;

/**
 * A part as faces and edges, for drawing only: its section swept from end to end.
 *
 * @param facets plane faces
 * @param edges where two faces meet
 */
record PartShape(List<Facet> facets, List<Edge> edges) {
  private static final int ROUND_SIDES = 28;

  /**
   * A plane face.
   *
   * @param loops its boundary, the outer loop first
   * @param normal out of the part
   */
  record Facet(List<List<Vector3D>> loops, Vector3D normal) {}

  /**
   * Where two faces meet.
   *
   * @param from one end
   * @param to the other
   * @param first normal of one face
   * @param second normal of the other
   * @param smooth true between two facets of one round surface
   */
  record Edge(Vector3D from, Vector3D to, Vector3D first, Vector3D second, boolean smooth) {}

  /** The shape of a part in the axes of the weldment. */
  static PartShape of(Part part) {
    List<Facet> facets = new ArrayList<>();
    List<Edge> edges = new ArrayList<>();
    Swept swept = swept(part);
    List<List<Vector3D>> lows = new ArrayList<>();
    List<List<Vector3D>> highs = new ArrayList<>();
    for (List<Vector2D> loop : swept.loops()) {
      lows.add(loop.stream().map(swept::low).toList());
      highs.add(loop.stream().map(swept::high).toList());
    }
    Vector3D lowNormal = swept.capNormal(lows.get(0)).negate();
    Vector3D highNormal = swept.capNormal(highs.get(0));
    facets.add(new Facet(lows, lowNormal));
    facets.add(new Facet(highs, highNormal));
    for (int i = 0; i < lows.size(); i++) {
      sides(lows.get(i), highs.get(i), lowNormal, highNormal, swept.round(), swept, facets, edges);
    }
    return new PartShape(List.copyOf(facets), List.copyOf(edges));
  }

  private static void sides(
      List<Vector3D> low,
      List<Vector3D> high,
      Vector3D lowNormal,
      Vector3D highNormal,
      boolean round,
      Swept swept,
      List<Facet> facets,
      List<Edge> edges) {
    int n = low.size();
    List<Vector3D> normals = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      Vector3D side = low.get(next).subtract(low.get(i));
      Vector3D inPlane =
          side.subtract(swept.along().scalarMultiply(side.dotProduct(swept.along())));
      Vector3D normal = inPlane.crossProduct(swept.along()).normalize();
      normals.add(normal);
      facets.add(
          new Facet(
              List.of(List.of(low.get(i), low.get(next), high.get(next), high.get(i))), normal));
      edges.add(new Edge(low.get(i), low.get(next), lowNormal, normal, false));
      edges.add(new Edge(high.get(i), high.get(next), highNormal, normal, false));
    }
    for (int i = 0; i < n; i++) {
      edges.add(
          new Edge(low.get(i), high.get(i), normals.get((i + n - 1) % n), normals.get(i), round));
    }
  }

  private static Swept swept(Part part) {
    Solid solid = Solid.of(part);
    Section section = solid.section();
    boolean round = section instanceof Section.Round;
    if (!part.outline().isEmpty()) {
      return new Swept(
          solid.sweep(), loops(section), round, p -> solid.fromMm(), p -> solid.toMm());
    }
    return new Swept(
        solid.sweep(),
        loops(section),
        round,
        p -> cut(part.left(), part.stock(), p),
        p -> part.lengthMm() - cut(part.right(), part.stock(), p));
  }

  private static List<List<Vector2D>> loops(Section section) {
    if (section instanceof Section.Round round) {
      List<List<Vector2D>> rims = new ArrayList<>();
      rims.add(rim(round.radiusMm(), 1));
      if (round.boreMm() > 0) {
        rims.add(rim(round.boreMm(), -1));
      }
      return rims;
    }
    return ((Section.Polygonal) section).loops().stream().map(Section.Loop::corners).toList();
  }

  /** A circle as a polygon; the rim of a bore runs the other way round. */
  private static List<Vector2D> rim(double radiusMm, int way) {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < ROUND_SIDES; i++) {
      double angle = way * 2 * Math.PI * i / ROUND_SIDES;
      corners.add(new Vector2D(radiusMm * Math.cos(angle), radiusMm * Math.sin(angle)));
    }
    return corners;
  }

  /** How much shorter the part is at a point of its section than at its long side. */
  private static double cut(EndCut end, Stock stock, Vector2D p) {
    if (end.square()) {
      return 0;
    }
    Face side = end.longSide().orElseThrow();
    Vector3D n = side.normal();
    double half = Math.abs(n.getY()) * stock.acrossMm() / 2 + Math.abs(n.getZ()) * stock.upMm() / 2;
    double fromLongSide = half - (n.getY() * p.getX() + n.getZ() * p.getY());
    return fromLongSide * Math.tan(Math.toRadians(end.degreesOffSquare()));
  }

  /** How far along the sweep an end lies at a point of the section. */
  private interface End {
    double at(Vector2D p);
  }

  /** A section, and the ends between which it is swept along z of its frame. */
  private record Swept(
      Frame frame, List<List<Vector2D>> loops, boolean round, End lowEnd, End highEnd) {
    Vector3D low(Vector2D p) {
      return frame.outOf(new Vector3D(p.getX(), p.getY(), lowEnd.at(p)));
    }

    Vector3D high(Vector2D p) {
      return frame.outOf(new Vector3D(p.getX(), p.getY(), highEnd.at(p)));
    }

    Vector3D along() {
      return frame.z();
    }

    /** Normal of a cut end, towards the high end. */
    Vector3D capNormal(List<Vector3D> loop) {
      Vector3D sum = Vector3D.ZERO;
      for (int i = 0; i < loop.size(); i++) {
        Vector3D a = loop.get(i).subtract(loop.get(0));
        Vector3D b = loop.get((i + 1) % loop.size()).subtract(loop.get(0));
        sum = sum.add(a.crossProduct(b));
      }
      return sum.normalize();
    }
  }
}
