package org.counterpull.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.access.Spot;
import org.counterpull.access.Tool;
import org.counterpull.access.ToolAccess;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.Weldment;

/** What stands in the way of tools and pins when everything is welded. */
final class Ways {
  private final Weldment weldment;
  private final ToolAccess access;

  Ways(Weldment weldment) {
    this.weldment = weldment;
    this.access = new ToolAccess(weldment);
  }

  /** The tool that a feature needs after welding. */
  static Tool late(Feature feature) {
    return switch (feature.kind()) {
      case HOLE, BORE -> Tool.REAMER;
      case THREAD -> Tool.TAP;
      case GREASE_FITTING -> Tool.GREASE_GUN;
      case SEAL, BEARING, CAPTIVE_PIECE, MACHINED_FACE, COATING, VESSEL, ACCUMULATOR, GAS_STRUT ->
          Tool.HAND;
    };
  }

  /** Other parts of the same piece that are in the tool's way; its own part is drilled loose. */
  Set<String> of(Feature feature, Tool tool) {
    Set<String> inTheWay = new TreeSet<>();
    for (Spot spot : Spot.of(weldment, feature)) {
      Set<String> counted = new TreeSet<>(Pieces.around(weldment, List.of(spot.part())));
      inTheWay.addAll(access.inTheWay(spot, tool, counted));
    }
    inTheWay.removeAll(feature.parts());
    return inTheWay;
  }

  /** Parts that a pin through a row of holes can't pass, whichever end it comes from. */
  Set<String> ofPin(List<Spot> row, double diameterMm) {
    return access.inTheWayOfPin(row, diameterMm, allParts());
  }

  /** The same for a rod that lines up barrels. */
  Collection<String> ofRod(Fixture rod) {
    List<Spot> row = new ArrayList<>();
    for (String name : rod.parts()) {
      Part part = weldment.part(name);
      row.add(new Spot(rod.name(), name, HingeRows.middle(part), part.frame().x(), 0));
    }
    boolean straight = row.stream().allMatch(row.get(0)::inLineWith);
    return straight ? ofPin(row, rod.diameterMm().orElse(1.0)) : Set.of();
  }

  /** Parts that close a loose piece in; empty for one that is welded or can be taken out. */
  Set<String> ofLoose(Part part) {
    boolean welded =
        weldment.joints().stream()
            .anyMatch(j -> j.first().equals(part.name()) || j.second().equals(part.name()));
    return welded ? Set.of() : access.enclosedBy(part, allParts());
  }

  /** Half of what a part fills along the axis of a hole in it, mm. */
  double halfMm(Spot spot) {
    return access.halfMm(spot);
  }

  private Set<String> allParts() {
    Set<String> names = new TreeSet<>();
    weldment.parts().forEach(part -> names.add(part.name()));
    return names;
  }
}
