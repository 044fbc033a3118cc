package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.access.Spot;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Weldment;

/** Two plates side by side whose holes take one pin. */
final class EarPairs {
  /** Farther apart than this, two plates are not a pair, mm. */
  private static final double FARTHEST_MM = 200;

  private EarPairs() {}

  /** A pair. */
  record Pair(String first, String second) {
    String name() {
      return first + " and " + second;
    }

    String words() {
      return name();
    }

    List<String> parts() {
      return List.of(first, second);
    }

    /** True when a rod or a spacer of the file sets the two already. */
    boolean isHeld(Weldment weldment) {
      return weldment.fixtures().stream()
          .filter(f -> f.kind() == Fixture.Kind.THROUGH_ROD || f.kind() == Fixture.Kind.SPACER)
          .anyMatch(f -> f.parts().containsAll(parts()));
    }
  }

  static List<Pair> of(Weldment weldment) {
    List<Spot> eyes = new ArrayList<>();
    for (Feature feature : weldment.features()) {
      boolean hole = feature.kind() == Feature.Kind.HOLE || feature.kind() == Feature.Kind.BORE;
      if (hole && feature.turnsOnMm().isPresent()) {
        Spot.of(weldment, feature).stream()
            .filter(s -> !(weldment.part(s.part()).stock() instanceof RoundTube))
            .forEach(eyes::add);
      }
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < eyes.size(); i++) {
      for (int j = i + 1; j < eyes.size(); j++) {
        if (sideBySide(weldment, eyes.get(i), eyes.get(j))) {
          pairs.add(new Pair(eyes.get(i).part(), eyes.get(j).part()));
        }
      }
    }
    return pairs;
  }

  private static boolean sideBySide(Weldment weldment, Spot one, Spot two) {
    return !one.part().equals(two.part())
        && one.inLineWith(two)
        && one.at().distance(two.at()) < FARTHEST_MM
        && fitted(weldment, one.part()).stream().anyMatch(fitted(weldment, two.part())::contains);
  }

  private static List<String> fitted(Weldment weldment, String part) {
    return weldment.joints().stream()
        .filter(joint -> joint.first().equals(part))
        .map(Joint::second)
        .toList();
  }
}
