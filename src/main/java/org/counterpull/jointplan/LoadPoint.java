package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.WeldLine;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Where the force on a joint acts, and the directions that it can take.
 *
 * @param at on a pin's middle; empty where it passes through the middle of the welds
 * @param words where, in words
 * @param directions unit vectors with their names
 */
record LoadPoint(Optional<Vector3D> at, String words, List<Direction> directions) {
  private static final double ALONG_PIN = 0.9;

  LoadPoint {
    directions = List.copyOf(directions);
  }

  /**
   * A direction of the force.
   *
   * @param words its name
   * @param unit unit vector
   */
  record Direction(String words, Vector3D unit) {}

  /** A pin in the attached part takes the force; without one it passes through the welds. */
  static LoadPoint of(Weldment weldment, Joint joint, List<WeldLine> lines) {
    List<Direction> directions = directions(lines);
    Part attached = weldment.part(joint.first());
    Optional<Feature> pin =
        weldment.features().stream()
            .filter(f -> f.parts().contains(attached.name()) && f.turnsOnMm().isPresent())
            .findFirst();
    if (pin.isEmpty()) {
      return new LoadPoint(Optional.empty(), "through the middle of the welds", directions);
    }
    Vector3D local = pin.get().at().orElse(new Vector3D(attached.lengthMm() / 2, 0, 0));
    Vector3D axis =
        attached.frame().directionOutOf(pin.get().axis().orElse(Vector3D.PLUS_I)).normalize();
    // A pin carries nothing along itself.
    List<Direction> carried =
        directions.stream().filter(d -> Math.abs(d.unit().dotProduct(axis)) < ALONG_PIN).toList();
    return new LoadPoint(
        Optional.of(attached.frame().outOf(local)),
        "on the pin of " + pin.get().name(),
        carried.isEmpty() ? directions : carried);
  }

  /** Along the longest line, out of the joint, and across both. */
  private static List<Direction> directions(List<WeldLine> lines) {
    WeldLine longest =
        lines.stream().max(Comparator.comparingDouble(l -> l.path().lengthMm())).orElseThrow();
    Vector3D along = longest.path().tangent(longest.path().lengthMm() / 2);
    Vector3D open = lines.stream().map(WeldLine::opening).reduce(Vector3D.ZERO, Vector3D::add);
    Vector3D out = square(open, along);
    if (out.getNorm() < 0.1) {
      out = square(longest.opening(), along);
    }
    if (out.getNorm() < 0.1) {
      out = along.orthogonal();
    }
    Vector3D unit = out.normalize();
    List<Direction> directions = new ArrayList<>();
    directions.add(new Direction("along the weld", along));
    directions.add(new Direction("across, in the plane of the joint", along.crossProduct(unit)));
    directions.add(new Direction("out of the plane of the joint", unit));
    return directions;
  }

  private static Vector3D square(Vector3D vector, Vector3D along) {
    return vector.subtract(new Vector3D(vector.dotProduct(along), along));
  }

  /** Direction in which the attached part stands off from the joint. */
  Vector3D out() {
    return directions.get(directions.size() - 1).unit();
  }
}
