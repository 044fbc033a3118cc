package org.counterpull.contact;

import java.util.List;
import org.counterpull.solid.FlatFace;

/**
 * How two parts meet, by ISO 17659, from the largest contact and its longest lines.
 *
 * <p>Ends and narrow sides are edges. Edge to edge: a butt, or a corner when most of the lines are
 * inside and outside corners. Edge on a broad side: a tee, or a corner when a long line is flush or
 * an outside corner. Broad on broad: a lap, or an edge joint when most lines are flush. A round
 * surface counts as broad. Bars about as wide as thick have no narrow sides.
 */
final class JointForms {
  /** Lines at least this share of the longest decide. */
  private static final double LONG = 0.8;

  private JointForms() {}

  static JointForm of(Touch main, List<RawLine> lines) {
    boolean firstIsEdge = main.first() != FlatFace.Kind.BROAD;
    boolean secondIsEdge = main.second() != FlatFace.Kind.BROAD;
    double longest = lines.stream().mapToDouble(l -> l.path().lengthMm()).max().orElse(0);
    List<RawLine> decide =
        lines.stream().filter(l -> l.path().lengthMm() >= LONG * longest).toList();
    double flush = share(decide, WeldLine.Shape.BUTT);
    double outer = share(decide, WeldLine.Shape.OUTSIDE_CORNER);
    if (firstIsEdge && secondIsEdge) {
      return edgeToEdge(decide, flush, outer);
    } else if (firstIsEdge || secondIsEdge) {
      return flush + outer >= 0.4 ? JointForm.CORNER : JointForm.TEE;
    }
    return flush >= 0.5 ? JointForm.EDGE : JointForm.LAP;
  }

  private static JointForm edgeToEdge(List<RawLine> decide, double flush, double outer) {
    if (decide.isEmpty() || flush >= 0.5) {
      return JointForm.BUTT;
    }
    return outer > 0 ? JointForm.CORNER : JointForm.TEE;
  }

  private static double share(List<RawLine> lines, WeldLine.Shape shape) {
    double all = lines.stream().mapToDouble(l -> l.path().lengthMm()).sum();
    double of =
        lines.stream().filter(l -> l.shape() == shape).mapToDouble(l -> l.path().lengthMm()).sum();
    return all > 0 ? of / all : 0;
  }
}
