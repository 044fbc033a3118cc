package org.counterpull.weldment;

import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.section.SectionMass;
import org.counterpull.stock.Plate;

/** Mass of a part as the file describes it: given, or stock area times longest length. */
public final class PartMass {
  private PartMass() {}

  /** Mass, kg; mitres and holes are not taken off. */
  public static double kg(Part part) {
    return part.massKg().orElseGet(() -> ofStock(part));
  }

  private static double ofStock(Part part) {
    double density = PartMetal.densityKgPerM3(part);
    if (part.stock() instanceof Plate plate && !part.outline().isEmpty()) {
      return SectionMass.kg(areaMm2(part.outline()), plate.thicknessMm(), density);
    }
    return SectionMass.kg(part.stock().areaMm2(), part.lengthMm(), density);
  }

  private static double areaMm2(List<Vector2D> corners) {
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Vector2D here = corners.get(i);
      Vector2D next = corners.get((i + 1) % corners.size());
      twice += here.getX() * next.getY() - next.getX() * here.getY();
    }
    return Math.abs(twice) / 2;
  }
}
