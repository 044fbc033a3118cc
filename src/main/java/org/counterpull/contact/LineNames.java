package org.counterpull.contact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Face;
import org.counterpull.weldment.Side;

/**
 * Sides and names of lines, in the axes of the joint's second part.
 *
 * <p>A line around something round is outside, one within something hollow inside; any other is on
 * the side to which the face that ends there looks, the first of top, bottom, front, back, left,
 * right where two are as near. Lines of one side are numbered by where their middles are: from left
 * to right, then front to back, then bottom to top. Each runs towards the right, the back or the
 * top. Places count in steps of a hundredth of a millimetre, so that rounding does not rename.
 */
final class LineNames {
  private static final double STEPS_PER_MM = 100;

  /** Keeps round numbers away from where a step begins. */
  private static final double OFFSET = 0.3183;

  private static final List<Face> BY_RANK =
      List.of(Face.TOP, Face.BOTTOM, Face.FRONT, Face.BACK, Face.LEFT, Face.RIGHT);

  private LineNames() {}

  /** A line with its side and name. */
  record Named(String run, Side side, RawLine line) {}

  static List<Named> named(String joint, List<RawLine> lines) {
    Map<Side, List<RawLine>> bySide = new EnumMap<>(Side.class);
    for (RawLine line : lines) {
      bySide.computeIfAbsent(side(line), s -> new ArrayList<>()).add(directed(line));
    }
    List<Named> named = new ArrayList<>();
    bySide.forEach(
        (side, here) -> {
          here.sort(ORDER);
          for (int i = 0; i < here.size(); i++) {
            String number = here.size() > 1 ? "#" + (i + 1) : "";
            named.add(new Named(joint + "/" + side.word() + number, side, here.get(i)));
          }
        });
    return named;
  }

  private static Side side(RawLine line) {
    return switch (line.rim()) {
      case INSIDE -> Side.INSIDE;
      case OUTSIDE -> Side.OUTSIDE;
      case NONE -> side(line.towards().normalize());
    };
  }

  static Side side(Vector3D towards) {
    Face best = Face.TOP;
    double most = -2;
    for (Face face : BY_RANK) {
      double here = towards.dotProduct(face.normal());
      if (here > most + 1e-6) {
        most = here;
        best = face;
      }
    }
    return Side.valueOf(best.name());
  }

  private static final Comparator<RawLine> ORDER =
      Comparator.<RawLine>comparingLong(line -> step(middle(line).getX()))
          .thenComparingLong(line -> step(middle(line).getY()))
          .thenComparingLong(line -> step(middle(line).getZ()))
          .thenComparingLong(line -> step(line.middle().tip().getX()))
          .thenComparingLong(line -> step(line.middle().tip().getY()))
          .thenComparingLong(line -> step(line.middle().tip().getZ()));

  private static Vector3D middle(RawLine line) {
    return line.path().at(line.path().lengthMm() / 2);
  }

  private static long step(double mm) {
    return (long) Math.floor(mm * STEPS_PER_MM + OFFSET);
  }

  /** Open lines run towards the right, the back or the top; closed ones stay as they are. */
  private static RawLine directed(RawLine line) {
    for (double part : line.path().end().subtract(line.path().start()).toArray()) {
      if (Math.abs(part) > 1e-4) {
        return part > 0 ? line : turned(line);
      }
    }
    return line;
  }

  private static RawLine turned(RawLine line) {
    double length = line.path().lengthMm();
    return line.along(
        line.path().reversed(),
        s -> {
          Corner corner = line.corners().apply(length - s);
          return corner.at(corner.tip(), corner.tangent().negate());
        });
  }
}
