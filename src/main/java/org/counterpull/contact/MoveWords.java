package org.counterpull.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A move in weldment axes, as one says it: "3.2 mm to the back and 1.0 mm up". */
final class MoveWords {
  private static final String[][] WORDS = {
    {"to the right", "to the left"}, {"to the back", "to the front"}, {"up", "down"}
  };

  private MoveWords() {}

  static String of(double mm, Vector3D direction) {
    double[] parts = direction.scalarMultiply(mm).toArray();
    double shown = Math.max(0.05, 0.01 * mm);
    List<String> said = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      if (Math.abs(parts[i]) >= shown) {
        String towards = WORDS[i][parts[i] > 0 ? 0 : 1];
        said.add(String.format(Locale.ROOT, "%.1f mm %s", Math.abs(parts[i]), towards));
      }
    }
    return said.isEmpty() ? String.format(Locale.ROOT, "%.2f mm", mm) : String.join(" and ", said);
  }
}
