package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.groove.Groove;
import org.counterpull.groove.Preparation;
import org.counterpull.weldment.EdgeTool;

/**
 * What a bevel is cut with: the first of the shop's tools that makes the form. Common practice, no
 * source.
 *
 * @param tools of the shop, in the order of the file
 * @param flame true where the metal can be flame-cut
 */
record EdgeCutting(List<EdgeTool> tools, boolean flame) {
  EdgeCutting {
    tools = List.copyOf(tools);
  }

  /** The start of a sentence: grind both edges. */
  String of(Groove groove, String edges) {
    if (groove.preparation().hasRadius()) {
      return (tools.contains(EdgeTool.MILL) ? "mill " : "have milled: ") + edges;
    }
    EdgeTool tool =
        tools.stream()
            .filter(t -> makes(t, groove.preparation()))
            .findFirst()
            .orElse(EdgeTool.GRINDER);
    return switch (tool) {
      case GRINDER -> "grind a bevel on " + edges;
      case SAW -> "saw a bevel on " + edges;
      case TORCH -> "flame-cut a bevel on " + edges + ", grind the scale off,";
      case MILL -> "mill a bevel on " + edges;
    };
  }

  private boolean makes(EdgeTool tool, Preparation form) {
    return switch (tool) {
      case GRINDER, MILL -> true;
      case SAW -> !form.isDouble();
      case TORCH -> flame;
    };
  }
}
