package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.heatjob.HeatAnswer.Kind;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Weldment;

/**
 * A feature with its place and limit.
 *
 * @param feature what it is
 * @param place where it gets hottest
 * @param takenOut true when it is out while welding goes on, so that nothing waits for it
 */
record Guarded(Feature feature, Place place, boolean takenOut) {

  /** All features of a weldment, those on several parts once for each. */
  static List<Guarded> of(Weldment weldment, List<WeldedRun> runs) {
    Schedule nothing = new Schedule(runs, List.of(), Optional.empty(), List.of());
    List<Place> places =
        Place.of(weldment, nothing).stream().filter(p -> p.kind() == Kind.FEATURE).toList();
    List<Guarded> guarded = new ArrayList<>();
    int next = 0;
    for (Feature feature : weldment.features()) {
      for (int n = 0; n < feature.parts().size(); n++) {
        guarded.add(new Guarded(feature, places.get(next++), out(feature)));
      }
    }
    return List.copyOf(guarded);
  }

  private static boolean out(Feature feature) {
    return switch (feature.kind()) {
      case SEAL, BEARING -> feature.removable();
      case GREASE_FITTING -> true;
      case BORE, THREAD, MACHINED_FACE, HOLE, COATING, CAPTIVE_PIECE -> false;
      case VESSEL, ACCUMULATOR, GAS_STRUT -> false;
    };
  }

  /** Whether runs wait for its sake. A coating is stripped beside the welds instead. */
  boolean waitedFor() {
    return place.limitC().isPresent() && !takenOut && feature.kind() != Feature.Kind.COATING;
  }
}
