package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.solid.Solid;
import org.counterpull.space.Face;
import org.counterpull.weldment.Check.Subject;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** The points of a part that checks look at. */
final class Spots {
  /** Points along an axis or an edge. */
  static final int ALONG = 8;

  private Spots() {}

  /** Points on the axis, the line through the middles of the section, from left to right. */
  static List<Vector3D> axis(Part part) {
    Vector2D centroid =
        part.outline().isEmpty()
            ? Solid.of(part).section().centroid()
            : new Vector2D(0, part.frame().into(Bodies.middle(part)).getY());
    double from = part.outline().isEmpty() ? 0 : fromMm(part);
    List<Vector3D> points = new ArrayList<>();
    for (int i = 0; i <= ALONG; i++) {
      points.add(
          part.frame()
              .outOf(
                  new Vector3D(
                      from + part.lengthMm() * i / ALONG, centroid.getX(), centroid.getY())));
    }
    return points;
  }

  private static double fromMm(Part part) {
    return part.outline().stream().mapToDouble(p -> p.getX()).min().orElseThrow();
  }

  /** The middle of a face, or of the part. */
  static Vector3D middle(Weldment weldment, Subject subject) {
    Part part = weldment.part(subject.part());
    Vector3D middle = Bodies.middle(part);
    return subject.face().map(face -> middle.add(toFace(part, face))).orElse(middle);
  }

  /** From the middle of the part to the middle of its face. */
  private static Vector3D toFace(Part part, Face face) {
    double half =
        switch (face) {
          case LEFT, RIGHT -> part.lengthMm() / 2;
          case FRONT, BACK -> acrossMm(part) / 2;
          case BOTTOM, TOP -> part.stock().upMm() / 2;
        };
    return part.frame().normal(face).scalarMultiply(half);
  }

  private static double acrossMm(Part part) {
    if (part.outline().isEmpty()) {
      return part.stock().acrossMm();
    }
    double low = part.outline().stream().mapToDouble(p -> p.getY()).min().orElseThrow();
    return part.outline().stream().mapToDouble(p -> p.getY()).max().orElseThrow() - low;
  }

  /** A grid of points all over a face. */
  static List<Vector3D> over(Part part, Face face) {
    Vector3D middle = Bodies.middle(part).add(toFace(part, face));
    Vector3D normal = part.frame().normal(face);
    List<Vector3D> sides = new ArrayList<>();
    double[] sizes = {part.lengthMm(), acrossMm(part), part.stock().upMm()};
    Vector3D[] axes = {part.frame().x(), part.frame().y(), part.frame().z()};
    for (int k = 0; k < 3; k++) {
      if (Math.abs(axes[k].dotProduct(normal)) < 0.5) {
        sides.add(axes[k].scalarMultiply(sizes[k]));
      }
    }
    List<Vector3D> points = new ArrayList<>();
    for (int i = 0; i <= ALONG; i++) {
      for (int j = 0; j <= 2; j++) {
        points.add(
            new Vector3D(
                1, middle, (double) i / ALONG - 0.5, sides.get(0), j / 2.0 - 0.5, sides.get(1)));
      }
    }
    return points;
  }
}
