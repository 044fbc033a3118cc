package org.counterpull.order;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.Weldment;

/**
 * The stiff middle of a weldment, taken as its centre of mass: the neutral axes go through it, and
 * its ends are free.
 */
public final class Middle {
  private Middle() {}

  /** In weldment axes, mm. */
  public static Vector3D of(Weldment weldment) {
    Vector3D sum = Vector3D.ZERO;
    double mass = 0;
    for (Part part : weldment.parts()) {
      double kg = PartMass.kg(part);
      sum = sum.add(kg, HingeRows.middle(part));
      mass += kg;
    }
    return sum.scalarMultiply(1 / mass);
  }
}
