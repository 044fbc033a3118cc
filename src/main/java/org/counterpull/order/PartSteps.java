package org.counterpull.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Cutting and fitting of parts. */
final class PartSteps {
  private PartSteps() {}

  static void add(Steps all) {
    cuts(all);
    for (Part part : all.weldment().parts()) {
      all.add(fit(all, part));
    }
  }

  /** Equal pieces are cut together, as on a cutting list. */
  private static void cuts(Steps all) {
    Map<String, List<Part>> pieces = new LinkedHashMap<>();
    for (Part part : all.weldment().parts()) {
      CutLength length = CutLength.of(part, all.joints());
      String key = text(part) + length.words();
      pieces.computeIfAbsent(key, k -> new ArrayList<>()).add(part);
    }
    int turn = 0;
    for (List<Part> equal : pieces.values()) {
      Part first = equal.get(0);
      CutLength length = CutLength.of(first, all.joints());
      List<String> names = equal.stream().map(Part::name).toList();
      all.add(
          new Steps.Draft(
                  StepTag.CUT,
                  first.name(),
                  "Cut " + equal.size() + " x " + text(first) + ", " + length.cut() + " mm",
                  Steps.names(names))
              .parts(names)
              .why(length.words())
              .times(equal.size())
              .turn(turn++));
    }
  }

  private static String text(Part part) {
    String shape = part.outline().isEmpty() ? "" : " to its outline";
    return part.stock().describe()
        + shape
        + end(" left", part.left())
        + end(" right", part.right());
  }

  private static String end(String name, EndCut cut) {
    return cut.square() ? "" : "," + name + " " + Steps.mm(cut.degreesOffSquare()) + " deg off";
  }

  private static Steps.Draft fit(Steps all, Part part) {
    Weldment weldment = all.weldment();
    FitOrder order = all.fitOrder();
    List<String> onto = order.fittedTo(weldment, part.name());
    String what =
        onto.isEmpty()
            ? "Set " + part.name() + " down as the base"
            : "Fit " + part.name() + " to " + Steps.names(onto);
    return new Steps.Draft(StepTag.FIT, part.name(), what, part.name())
        .parts(List.of(part.name()))
        .subject(part.name())
        .why(
            onto.isEmpty()
                ? "The heaviest part is the base; the others are fitted outwards from it."
                : "Parts are fitted outwards from the base, so that each has something to lie on.")
        .links(all.ways().ofLoose(part).stream().map(Step::partLink).toList())
        .turn(order.of(part.name()));
  }
}
