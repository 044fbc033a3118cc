package org.counterpull.weldment;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Pieces that welds hold together; only pins, bearings or bolts join one to another. */
public final class Pieces {
  private Pieces() {}

  /** Every piece with the names of its parts, file order. */
  public static List<List<String>> of(Weldment weldment) {
    List<List<String>> pieces = new ArrayList<>();
    for (Part part : weldment.parts()) {
      if (pieces.stream().noneMatch(p -> p.contains(part.name()))) {
        pieces.add(around(weldment, List.of(part.name())));
      }
    }
    return pieces;
  }

  /** The parts that joints tie to some parts, those included, file order. */
  public static List<String> around(Weldment weldment, List<String> parts) {
    TreeSet<String> reached = new TreeSet<>(parts);
    boolean grows = true;
    while (grows) {
      grows = false;
      for (Joint joint : weldment.joints()) {
        if (reached.contains(joint.first()) != reached.contains(joint.second())) {
          reached.add(joint.first());
          reached.add(joint.second());
          grows = true;
        }
      }
    }
    return weldment.parts().stream().map(Part::name).filter(reached::contains).toList();
  }
}
