package org.counterpull.contact;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.counterpull.solid.Separation;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Finds parts that are in the same place.
 *
 * <p>A part that is shaped may be in the parts that it is joined to: it is ground until it fits.
 * Parts have no holes, so a bar through a plate always overlaps.
 */
final class Overlaps {
  private Overlaps() {}

  static List<Overlap> of(Weldment weldment, List<Solid> solids, FitUp fitUp) {
    Set<Set<String>> ground = new HashSet<>();
    for (Joint joint : weldment.joints()) {
      Part first = weldment.part(joint.first());
      Part second = weldment.part(joint.second());
      if (first.shaped() || second.shaped()) {
        ground.add(Set.of(first.name(), second.name()));
      }
    }
    List<Overlap> overlaps = new ArrayList<>();
    for (int i = 0; i < solids.size(); i++) {
      for (int j = i + 1; j < solids.size(); j++) {
        Solid a = solids.get(i);
        Solid b = solids.get(j);
        if (!ground.contains(Set.of(a.name(), b.name()))) {
          Separation.overlap(a, b, fitUp.overlapMm())
              .map(move -> new Overlap(a.name(), b.name(), move.mm(), move.direction()))
              .ifPresent(overlaps::add);
        }
      }
    }
    return overlaps;
  }
}
