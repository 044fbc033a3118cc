package org.counterpull.pull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/**
 * Bodies and everything that will happen to them: where they may be linked, what is read, what
 * loads them. A {@link Structure} starts from it with all bodies loose.
 */
public final class Assembly {
  private static final double SAME_PLACE_MM = 1e-6;

  private final List<ElasticBody> bodies = new ArrayList<>();
  private final List<List<Coordinate>> links = new ArrayList<>();
  private final List<Coordinate> readings = new ArrayList<>();
  private final List<Load> loads = new ArrayList<>();

  /** Adds a body and returns its number. */
  public int body(ElasticBody body) {
    bodies.add(body);
    return bodies.size() - 1;
  }

  /**
   * Adds a place where two points may be linked and returns its number. Both must lie at the same
   * place, each carried by its own node; across a gap take its middle.
   *
   * @param from point on one side
   * @param to point on the other
   * @param axes x along the run, y across the joint from {@code from} to {@code to}, z normal
   */
  public int link(MaterialPoint from, MaterialPoint to, Frame axes) {
    if (from.position().distance(to.position()) > SAME_PLACE_MM) {
      throw new IllegalArgumentException(
          "a link joins two points at one place, not "
              + from.position()
              + " and "
              + to.position()
              + ": a spring with a lever of its own would turn the assembly");
    }
    List<Coordinate> openings = new ArrayList<>();
    for (Vector3D axis : List.of(axes.x(), axes.y(), axes.z())) {
      openings.add(opening(from, to, axis));
    }
    for (Vector3D axis : List.of(axes.x(), axes.y(), axes.z())) {
      openings.add(Coordinate.turn(to, axis).plus(Coordinate.turn(from, axis).times(-1)));
    }
    return addLink(openings);
  }

  /** Adds a place where a point may be linked to the ground and returns its number. */
  public int groundLink(MaterialPoint point, Frame axes) {
    List<Coordinate> openings = new ArrayList<>();
    for (Vector3D axis : List.of(axes.x(), axes.y(), axes.z())) {
      openings.add(displacement(point, axis));
    }
    for (Vector3D axis : List.of(axes.x(), axes.y(), axes.z())) {
      openings.add(Coordinate.turn(point, axis));
    }
    return addLink(openings);
  }

  /** Adds a reading and returns its number. */
  public int reading(Coordinate coordinate) {
    coordinate.terms().forEach(this::check);
    readings.add(coordinate);
    return readings.size() - 1;
  }

  /** Adds a load and returns its number. */
  public int load(Load load) {
    load.forces().forEach(force -> force.on().terms().forEach(this::check));
    for (Load.Strain strain : load.strains()) {
      int expected = 6 * bodies.get(strain.body()).exposedCount();
      if (strain.response().displacements().length != expected) {
        throw new IllegalArgumentException(
            "an inherent strain of body " + strain.body() + " needs " + expected + " numbers");
      }
    }
    loads.add(load);
    return loads.size() - 1;
  }

  /** Displacement of a point along a direction. */
  public Coordinate displacement(MaterialPoint point, Vector3D direction) {
    return Coordinate.displacement(point, nodeOf(point), direction);
  }

  /** How far one point moves away from another along a direction. */
  public Coordinate opening(MaterialPoint from, MaterialPoint to, Vector3D direction) {
    return displacement(to, direction).plus(displacement(from, direction).times(-1));
  }

  List<ElasticBody> bodies() {
    return List.copyOf(bodies);
  }

  List<List<Coordinate>> links() {
    return List.copyOf(links);
  }

  List<Coordinate> readings() {
    return List.copyOf(readings);
  }

  List<Load> loads() {
    return List.copyOf(loads);
  }

  private int addLink(List<Coordinate> openings) {
    links.add(List.copyOf(openings));
    return links.size() - 1;
  }

  private Vector3D nodeOf(MaterialPoint point) {
    return bodies.get(point.body()).exposed(point.node());
  }

  private void check(Coordinate.Term term) {
    if (term.node() >= bodies.get(term.body()).exposedCount()) {
      throw new IllegalArgumentException("body " + term.body() + " exposes no node " + term.node());
    }
  }
}
