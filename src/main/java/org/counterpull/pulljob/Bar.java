package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.pull.BeamBody;
import org.counterpull.pull.ElasticBody;
import org.counterpull.pull.ElasticMaterial;
import org.counterpull.pull.FreeResponse;
import org.counterpull.solid.Solid;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Part;

/** A part as a shear-flexible beam along its centroid. */
final class Bar implements Body {
  private static final double SAME_PLACE_MM = 0.01;

  /** Shrinkage along the bar below this share of the whole is nothing. */
  private static final double LEAST_SHARE = 1e-6;

  /** How many places besides those that are needed tell its shape. */
  private static final int STATIONS = 8;

  private final Frame axes;
  private final List<Double> places = new ArrayList<>();
  private final BeamBody beam;
  private final double lengthMm;
  private final String reason;

  /** The beam of a part with nodes at the feet of the points that are needed. */
  Bar(Part part, List<Vector3D> needed, ElasticMaterial material, String reason) {
    Vector2D centroid = Solid.of(part).section().centroid();
    Frame f = part.frame();
    Vector3D origin = f.outOf(new Vector3D(0, centroid.getX(), centroid.getY()));
    this.axes = new Frame(origin, f.x(), f.y(), f.z());
    this.lengthMm = part.lengthMm();
    this.reason = reason;
    TreeSet<Double> wanted = new TreeSet<>(List.of(0.0, lengthMm));
    for (int i = 1; i < STATIONS; i++) {
      wanted.add(lengthMm * i / STATIONS);
    }
    needed.forEach(point -> wanted.add(place(point)));
    for (double place : wanted) {
      if (places.isEmpty() || place - places.get(places.size() - 1) > SAME_PLACE_MM) {
        places.add(place);
      }
    }
    List<Vector3D> nodes = places.stream().map(this::onAxis).toList();
    beam = BeamBody.straight(nodes, Sections.of(part.stock()), f.z(), material);
  }

  private double place(Vector3D point) {
    return Math.max(0, Math.min(lengthMm, axes.into(point).getX()));
  }

  private Vector3D onAxis(double place) {
    return axes.outOf(new Vector3D(place, 0, 0));
  }

  @Override
  public ElasticBody elastic() {
    return beam;
  }

  @Override
  public String reason() {
    return reason;
  }

  @Override
  public int nodeAt(Vector3D point) {
    double place = place(point);
    int nearest = 0;
    for (int i = 1; i < places.size(); i++) {
      if (Math.abs(places.get(i) - place) < Math.abs(places.get(nearest) - place)) {
        nearest = i;
      }
    }
    return nearest;
  }

  /**
   * The part of the wall's shrinkage that runs along the bar: a shortening, a kink by its distance
   * from the axis, and the kink of its own angle by its share of the section's stiffness.
   */
  @Override
  public Optional<FreeResponse> shrunk(ShrunkStrip strip) {
    double alongBar = Math.pow(strip.across().dotProduct(axes.x()), 2);
    if (alongBar < LEAST_SHARE) {
      return Optional.empty();
    }
    Vector3D at = axes.into(strip.middle());
    Vector3D out = axes.directionInto(strip.outward());
    double x = place(strip.middle());
    int element = 0;
    while (element < places.size() - 2 && places.get(element + 1) < x) {
      element++;
    }
    double from = places.get(element);
    double fraction = (x - from) / (places.get(element + 1) - from);
    double area = strip.thicknessMm() * strip.lengthMm();
    FreeResponse sum =
        beam.wallShrinkage(
            element, fraction, strip.acrossMm() * alongBar, area, at.getY(), at.getZ());
    double moment = strip.angleRad() * alongBar * Math.pow(strip.thicknessMm(), 2) / 12;
    sum = sum.plus(beam.wallShrinkage(element, fraction, moment, area, out.getY(), out.getZ()));
    return Optional.of(sum.plus(beam.wallShrinkage(element, fraction, -moment, area, 0, 0)));
  }

  @Override
  public List<Vector3D> stations() {
    List<Vector3D> stations = new ArrayList<>();
    for (int i = 0; i <= STATIONS; i++) {
      stations.add(onAxis(lengthMm * i / STATIONS));
    }
    return stations;
  }
}
