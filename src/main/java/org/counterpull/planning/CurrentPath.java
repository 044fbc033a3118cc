package org.counterpull.planning;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.plan.Plan.Refusal;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.Weldment;

/**
 * Whether the welding current gets back to the return clamp through welded metal only. Pieces that
 * no joint ties touch each other in pins, hinges and bearings: current that crosses there arcs in
 * them.
 */
final class CurrentPath {
  private CurrentPath() {}

  static List<Refusal> of(Weldment weldment, List<JointPlan> joints) {
    List<Fixture> clamps =
        weldment.fixtures().stream()
            .filter(fixture -> fixture.kind() == Fixture.Kind.RETURN_CLAMP)
            .toList();
    if (clamps.isEmpty()) {
      return List.of();
    }
    List<Refusal> refusals = new ArrayList<>();
    for (List<String> piece : Pieces.of(weldment)) {
      boolean welded =
          joints.stream().anyMatch(p -> piece.contains(p.joint().first()) && !p.runs().isEmpty());
      boolean clamped = clamps.stream().anyMatch(c -> c.parts().stream().anyMatch(piece::contains));
      if (welded && !clamped) {
        refusals.add(refusal(piece, clamps));
      }
    }
    return refusals;
  }

  private static Refusal refusal(List<String> piece, List<Fixture> clamps) {
    Fixture clamp = clamps.get(0);
    return new Refusal(
        clamp.name(),
        "the return clamp sits on "
            + String.join(", ", clamp.parts())
            + ", and welds on "
            + String.join(", ", piece)
            + " send their current to it across a pin, hinge or bearing, where it arcs and pits"
            + " (R14; from memory: 29 CFR 1910.254(c)(2))",
        "put a return clamp on " + piece.get(0) + " itself, within 150 mm of the weld");
  }
}
