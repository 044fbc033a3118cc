package org.counterpull.jointplan;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.contact.WeldLine;
import org.counterpull.fillet.SkewThroat;
import org.counterpull.quantity.Printed;

/** What is to be said of fillets whose faces are far from square. */
final class SkewWords {
  private SkewWords() {}

  static List<String> of(List<WeldLine> lines) {
    List<String> words = new ArrayList<>();
    for (WeldLine line : lines) {
      double deg = line.dihedralDeg();
      String faces =
          line.run() + " has " + Printed.quantity(Math.round(deg), "deg") + " between its faces: ";
      if (line.shape() != WeldLine.Shape.FILLET || deg >= 60 && deg <= 120) {
        continue;
      }
      if (deg > 120) {
        words.add(faces + "more than 120, so EN 1993-1-8 counts it by test only; cut and etch one");
      } else if (deg < 30) {
        words.add(faces + "under 30 nothing fuses at its root, and it counts for nothing");
      } else {
        words.add(
            faces
                + "under 60 it counts as a partial penetration groove, less "
                + Printed.quantity(SkewThroat.lossMm(deg), "mm")
                + " that stay unfused at the root (from memory: AWS D1.1)");
      }
    }
    return words;
  }
}
