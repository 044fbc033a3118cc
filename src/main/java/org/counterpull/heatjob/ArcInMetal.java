package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.link.Links;
import org.counterpull.heat.source.DoubleEllipsoid;
import org.counterpull.heat.source.MovingSource;
import org.counterpull.heat.source.SourceShape;
import org.counterpull.heat.source.TravelPath;
import org.counterpull.heat.source.UniformBox;
import org.counterpull.heatjob.Schedule.Arc;
import org.counterpull.heatjob.WeldedRun.Stretch;

/** An arc as moving power, and the metal that it lays as a way for heat. */
final class ArcInMetal {
  private static final double PIECE_MM = 5;
  private static final double WELD_MM = 8;

  /** The rear of the pool is twice as long as its front: from memory, J. Goldak et al., 1984. */
  private static final double REAR = 2;

  private ArcInMetal() {}

  /** The moving sources of an arc, one for each stretch. */
  static List<MovingSource> sources(Arc arc) {
    List<MovingSource> sources = new ArrayList<>();
    double startS = arc.startS();
    for (Stretch stretch : arc.stretches()) {
      String name = arc.run().name() + (arc.tack() ? " tack" : " pass " + arc.number());
      MovingSource source =
          MovingSource.along(
              name,
              arc.pass().powerW(),
              startS,
              path(arc.run(), stretch),
              arc.pass().travelMmPerS(),
              shape(arc.pass()));
      sources.add(source);
      startS += stretch.lengthMm() / arc.pass().travelMmPerS();
    }
    return sources;
  }

  private static SourceShape shape(WeldedRun.Pass pass) {
    double r = pass.radiusMm();
    return pass.box()
        .<SourceShape>map(b -> new UniformBox(b.lengthMm(), b.widthMm(), b.depthMm()))
        .orElseGet(() -> new DoubleEllipsoid(r, REAR * r, r, r));
  }

  private static TravelPath path(WeldedRun run, Stretch stretch) {
    boolean straight = run.path() instanceof LinePath.Straight;
    int pieces = straight ? 1 : (int) Math.max(2, Math.ceil(stretch.lengthMm() / PIECE_MM));
    List<Vec3> points = new ArrayList<>();
    List<Vec3> into = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      double at = stretch.fromMm() + stretch.lengthMm() * i / pieces;
      points.add(Axes.point(run.path().at(at)));
      into.add(Axes.point(into(run, at)));
    }
    return new TravelPath(points, into);
  }

  /** Into the metal; on an arc of a circle it turns with the arc. */
  private static Vector3D into(WeldedRun run, double atMm) {
    Vector3D into = run.opening().negate();
    Vector3D along = run.path().tangent(atMm);
    if (run.path() instanceof LinePath.Arc arc) {
      Vector3D middle = arc.at(arc.lengthMm() / 2).subtract(arc.centre()).normalize();
      double out = into.dotProduct(middle);
      double up = into.dotProduct(arc.axis());
      Vector3D here = arc.at(atMm).subtract(arc.centre()).normalize();
      into = new Vector3D(out, here, up, arc.axis());
    }
    Vector3D square = into.subtract(along.scalarMultiply(into.dotProduct(along)));
    return square.getNorm() > 0.1 ? square.normalize() : along.orthogonal();
  }

  /**
   * The weld metal of an arc, conducting from the moment that the arc has passed. A bead of section
   * A conducts from part to part as a square bar of that section as long as it is wide (own choice:
   * between the short way at the root of a fillet and the long one at its face).
   */
  static List<Link> weldMetal(Layout layout, Arc arc) {
    List<Link> links = new ArrayList<>();
    if (arc.run().parts().size() < 2) {
      return links;
    }
    double side = Math.sqrt(arc.pass().beadMm2());
    double startS = arc.startS();
    for (Stretch stretch : arc.stretches()) {
      int pieces = (int) Math.max(1, Math.round(stretch.lengthMm() / WELD_MM));
      double each = stretch.lengthMm() / pieces;
      for (int i = 0; i < pieces; i++) {
        double from = stretch.fromMm() + i * each;
        Vec3 middle = Axes.point(arc.run().path().at(from + each / 2));
        Block a = layout.nearest(arc.run().parts().get(0), middle);
        Block b = layout.nearest(arc.run().parts().get(1), middle);
        links.add(
            Links.weld(
                a,
                b,
                Axes.point(arc.run().path().at(from)),
                Axes.point(arc.run().path().at(from + each)),
                side,
                side,
                startS + (i + 1) * each / arc.pass().travelMmPerS()));
      }
      startS += stretch.lengthMm() / arc.pass().travelMmPerS();
    }
    return links;
  }
}
