package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heatjob.HeatAnswer.Kind;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Probe;
import org.counterpull.weldment.Weldment;

/**
 * A place whose temperature is noted.
 *
 * @param name as it is reported
 * @param kind what is there
 * @param part on which it is
 * @param at in weldment axes
 * @param limitC highest allowed there; empty for none
 */
record Place(String name, Kind kind, String part, Vec3 at, Optional<Double> limitC) {
  private static final int LOOKS = 40;

  /** Probes, features and the starts of runs, in that order. */
  static List<Place> of(Weldment weldment, Schedule schedule) {
    List<Place> places = new ArrayList<>();
    for (Probe probe : weldment.probes()) {
      Part part = weldment.part(probe.part());
      Vec3 at = Axes.point(part.frame().outOf(probe.at()));
      places.add(new Place(probe.name(), Kind.PROBE, part.name(), at, Optional.empty()));
    }
    for (Feature feature : weldment.features()) {
      for (String name : feature.parts()) {
        Vector3D at = nearestToWelds(feature, weldment.part(name), schedule.runs());
        String label = feature.parts().size() > 1 ? feature.name() + " " + name : feature.name();
        places.add(new Place(label, Kind.FEATURE, name, Axes.point(at), FeatureLimits.of(feature)));
      }
    }
    for (WeldedRun run : schedule.runs()) {
      String part = run.parts().get(run.parts().size() - 1);
      Vec3 at = Axes.point(run.path().at(run.stretches().get(0).fromMm()));
      places.add(new Place(run.name(), Kind.RUN_START, part, at, Optional.empty()));
    }
    return places;
  }

  /** The point of a feature that is nearest to any weld: the one that gets hottest. */
  private static Vector3D nearestToWelds(Feature feature, Part part, List<WeldedRun> runs) {
    List<Vector3D> points = points(feature, part);
    Vector3D best = points.get(0);
    double least = Double.MAX_VALUE;
    for (Vector3D point : points) {
      for (WeldedRun run : runs) {
        for (int i = 0; i <= LOOKS; i++) {
          double d = run.path().at(run.path().lengthMm() * i / LOOKS).distance(point);
          if (d < least - 1e-6) {
            least = d;
            best = point;
          }
        }
      }
    }
    return best;
  }

  private static List<Vector3D> points(Feature feature, Part part) {
    Vector3D middle = feature.at().orElse(new Vector3D(part.lengthMm() / 2, 0, 0));
    if (feature.diameterMm().isEmpty()) {
      return List.of(part.frame().outOf(middle));
    }
    Vector3D axis = feature.axis().orElse(Vector3D.PLUS_I).normalize();
    double half = feature.lengthMm().orElse(0.0) / 2;
    Vector3D side = axis.orthogonal();
    Vector3D other = axis.crossProduct(side);
    List<Vector3D> points = new ArrayList<>();
    for (int k = -4; k <= 4; k++) {
      for (int a = 0; a < 24; a++) {
        double angle = 2 * Math.PI * a / 24;
        double r = feature.diameterMm().get() / 2;
        Vector3D round = new Vector3D(r * Math.cos(angle), side, r * Math.sin(angle), other);
        points.add(part.frame().outOf(middle.add(round).add(k * half / 4, axis)));
      }
    }
    return points;
  }
}
