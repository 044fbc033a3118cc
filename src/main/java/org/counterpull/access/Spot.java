package org.counterpull.access;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * A place of a feature on one part.
 *
 * @param feature name of the feature
 * @param part name of the part
 * @param at its middle, weldment axes, mm
 * @param axis unit vector
 * @param diameterMm of the hole, 0 when not known
 */
public record Spot(String feature, String part, Vector3D at, Vector3D axis, double diameterMm) {
  /** Axes this close, in mm and in sine, count as one. */
  private static final double ALIKE_MM = 1;

  private static final double ALIKE_SINE = 0.02;

  /** Every place of a feature. */
  public static List<Spot> of(Weldment weldment, Feature feature) {
    List<Spot> spots = new ArrayList<>();
    for (String name : feature.parts()) {
      Part part = weldment.part(name);
      Vector3D local = feature.at().orElse(new Vector3D(part.lengthMm() / 2, 0, 0));
      Vector3D axis = feature.axis().orElse(Vector3D.PLUS_I);
      spots.add(
          new Spot(
              feature.name(),
              name,
              part.frame().outOf(local),
              part.frame().directionOutOf(axis).normalize(),
              feature.diameterMm().orElse(0.0)));
    }
    return spots;
  }

  /** True for two places on one axis. */
  public boolean inLineWith(Spot other) {
    boolean parallel = axis.crossProduct(other.axis).getNorm() < ALIKE_SINE;
    return parallel && axis.crossProduct(other.at.subtract(at)).getNorm() < ALIKE_MM;
  }
}
