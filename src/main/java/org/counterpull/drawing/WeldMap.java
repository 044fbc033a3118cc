package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.WeldLine;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;
import org.counterpull.weldment.Part;

/**
 * The weldment with its runs as numbers: as many views as it takes to see every run, each number
 * once. A dot is where a run starts, an arrow points where it goes; what lies behind something is
 * dashed.
 */
public final class WeldMap {
  private static final int LOOKS = 9;
  private static final double SEEN_ENOUGH = 0.6;
  private static final double OFF_THE_CORNER_MM = 1.5;
  private static final double FLARE_SHARE = 0.6;

  private final Plan plan;
  private final List<PartShape> shapes;
  private final Map<Camera, List<Integer>> views;

  /** Chooses the views; the runs are numbered as in {@link Plan#runs()}, from 1. */
  public WeldMap(Plan plan) {
    this.plan = plan;
    shapes = plan.weldment().parts().stream().map(PartShape::of).toList();
    views = choose();
  }

  /** The drawings at a width; numbers keep their size, so that a narrow map is no smaller print. */
  public List<Markup> drawings(double widthPx) {
    List<Markup> drawings = new ArrayList<>();
    views.forEach((camera, runs) -> drawings.add(new WeldView(this, camera, runs, widthPx).draw()));
    return drawings;
  }

  List<PartShape> shapes() {
    return shapes;
  }

  List<Part> parts() {
    return plan.weldment().parts();
  }

  String title() {
    return "Weld map of " + plan.weldment().name();
  }

  WeldLine line(int run) {
    return plan.runs().get(run).line();
  }

  int runs() {
    return plan.runs().size();
  }

  /** A point of a run, just off the corner, so that its own walls don't hide it. */
  Vector3D point(int run, double share) {
    WeldLine line = line(run);
    return line.path()
        .at(share * line.path().lengthMm())
        .add(line.opening().scalarMultiply(offTheCornerMm(line)));
  }

  /** The face of a flare groove lies further out than its root. */
  private static double offTheCornerMm(WeldLine line) {
    return line.flareRadiusMm().map(r -> FLARE_SHARE * r).orElse(OFF_THE_CORNER_MM);
  }

  /** Takes the view that shows most of what no view showed yet, until none shows more. */
  private Map<Camera, List<Integer>> choose() {
    Map<Camera, List<Integer>> chosen = new LinkedHashMap<>();
    Map<Camera, List<Integer>> shown = new LinkedHashMap<>();
    for (Camera camera : Camera.CORNERS) {
      shown.put(camera, seenFrom(camera));
    }
    List<Integer> left = new ArrayList<>();
    for (int i = 0; i < runs(); i++) {
      left.add(i);
    }
    while (true) {
      Camera best =
          Camera.CORNERS.stream()
              .max(
                  Comparator.<Camera>comparingLong(c -> gain(shown.get(c), left))
                      .thenComparing(c -> -Camera.CORNERS.indexOf(c)))
              .orElseThrow();
      List<Integer> gained = shown.get(best).stream().filter(left::contains).toList();
      if (gained.isEmpty()) {
        break;
      }
      chosen.put(best, new ArrayList<>(gained));
      left.removeAll(gained);
    }
    Camera first = chosen.keySet().stream().findFirst().orElse(Camera.CORNERS.get(0));
    chosen.computeIfAbsent(first, c -> new ArrayList<>()).addAll(left);
    chosen.values().forEach(runs -> runs.sort(Comparator.naturalOrder()));
    return chosen;
  }

  private static long gain(List<Integer> seen, List<Integer> left) {
    return seen.stream().filter(left::contains).count();
  }

  private List<Integer> seenFrom(Camera camera) {
    Sight sight = new Sight(camera, shapes);
    List<Integer> seen = new ArrayList<>();
    for (int run = 0; run < runs(); run++) {
      int looks = 0;
      for (int k = 0; k < LOOKS; k++) {
        looks += sight.seen(point(run, (k + 0.5) / LOOKS)) ? 1 : 0;
      }
      if (looks >= SEEN_ENOUGH * LOOKS) {
        seen.add(run);
      }
    }
    return seen;
  }
}
