package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A number that depends linearly on how exposed nodes move: the opening across a joint, a distance
 * that is checked. As a load, it is the pattern of forces that does work on that number.
 *
 * @param terms what each node adds
 */
public record Coordinate(List<Term> terms) {

  /**
   * What one node adds.
   *
   * @param body number of the body
   * @param node exposed node of that body
   * @param displacement factor on the displacement
   * @param turn factor on the turn
   */
  public record Term(int body, int node, Vector3D displacement, Vector3D turn) {}

  public Coordinate {
    terms = List.copyOf(terms);
  }

  /** Displacement of a point along a direction, mm; {@code nodePosition} is where its node is. */
  public static Coordinate displacement(
      MaterialPoint point, Vector3D nodePosition, Vector3D direction) {
    Vector3D arm = point.position().subtract(nodePosition);
    return new Coordinate(
        List.of(new Term(point.body(), point.node(), direction, arm.crossProduct(direction))));
  }

  /** Turn of a point about an axis, rad. */
  public static Coordinate turn(MaterialPoint point, Vector3D axis) {
    return new Coordinate(List.of(new Term(point.body(), point.node(), Vector3D.ZERO, axis)));
  }

  /** The sum of both. */
  public Coordinate plus(Coordinate other) {
    List<Term> all = new ArrayList<>(terms);
    all.addAll(other.terms);
    return new Coordinate(all);
  }

  /** The multiple. */
  public Coordinate times(double factor) {
    return new Coordinate(
        terms.stream()
            .map(
                term ->
                    new Term(
                        term.body,
                        term.node,
                        term.displacement.scalarMultiply(factor),
                        term.turn.scalarMultiply(factor)))
            .toList());
  }
}
