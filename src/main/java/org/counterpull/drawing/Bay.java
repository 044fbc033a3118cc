package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;

/**
 * The room that the beads of one run fill.
 *
 * @param room the figure without a cap
 * @param outwards unit vector from the root to the face; layers rise along it
 * @param faceFrom where the face starts; place 1 of a layer lies at this end
 * @param faceTo where the face ends
 * @param run whose beads they are
 */
record Bay(Region room, Point outwards, Point faceFrom, Point faceTo, RunPlan run) {
  private static final int CAP_CORNERS = 14;
  private static final double HIGHEST_CAP = 0.3;

  /**
   * A bead where it lies.
   *
   * @param shape its figure
   * @param pass its number in the run
   */
  record Bead(Region shape, int pass) {}

  /**
   * The beads, layer by layer: each layer takes the area of its passes, each bead its share. Where
   * room and cap hold less than all beads, because some of the metal is melted wall, all are drawn
   * smaller alike.
   */
  List<Bead> beads() {
    double total = run.passes().stream().mapToDouble(p -> p.area().value()).sum();
    Region filled = capped(total);
    TreeMap<Integer, List<PassPlan>> layers = new TreeMap<>();
    for (PassPlan pass : run.passes()) {
      layers.computeIfAbsent(pass.layer(), k -> new ArrayList<>()).add(pass);
    }
    List<Bead> beads = new ArrayList<>();
    double share = Math.min(1, filled.areaMm2() / total);
    double below = 0;
    double from = Double.NEGATIVE_INFINITY;
    for (List<PassPlan> layer : layers.values()) {
      below += share * layer.stream().mapToDouble(p -> p.area().value()).sum();
      double to = filled.levelOf(outwards, below);
      Region slice = filled.below(outwards, to);
      slice = from == Double.NEGATIVE_INFINITY ? slice : slice.above(outwards, from);
      beads.addAll(split(slice, layer));
      from = to;
    }
    return beads;
  }

  private List<Bead> split(Region slice, List<PassPlan> layer) {
    Point across = faceTo.minus(faceFrom).unit();
    List<PassPlan> order =
        layer.stream()
            .sorted(Comparator.comparingInt(PassPlan::place).thenComparingInt(PassPlan::number))
            .toList();
    double sum = order.stream().mapToDouble(p -> p.area().value()).sum();
    List<Bead> beads = new ArrayList<>();
    Region rest = slice;
    double done = 0;
    for (PassPlan pass : order) {
      done += pass.area().value();
      boolean last = pass == order.get(order.size() - 1);
      double to = slice.levelOf(across, slice.areaMm2() * done / sum);
      Region bead = last ? rest : rest.below(across, to);
      rest = rest.above(across, to);
      if (bead.corners().size() > 2) {
        beads.add(new Bead(bead, pass.number()));
      }
    }
    return beads;
  }

  /** The room with a rounded cap that holds what is more than the room. */
  private Region capped(double totalMm2) {
    double width = faceFrom.distance(faceTo);
    double over = totalMm2 - room.areaMm2();
    if (over <= 1e-9 || width < 1e-9) {
      return room;
    }
    double rise = Math.min(HIGHEST_CAP * width, 1.5 * over / width);
    List<Point> corners = new ArrayList<>();
    for (Point corner : room.corners()) {
      corners.add(corner);
      if (corner.equals(faceFrom)) {
        boolean forward = next(corner).equals(faceTo);
        if (forward) {
          cap(corners, faceFrom, faceTo, rise);
        }
      } else if (corner.equals(faceTo) && next(corner).equals(faceFrom)) {
        cap(corners, faceTo, faceFrom, rise);
      }
    }
    return new Region(corners);
  }

  private Point next(Point corner) {
    int i = room.corners().indexOf(corner);
    return room.corners().get((i + 1) % room.corners().size());
  }

  private void cap(List<Point> corners, Point from, Point to, double rise) {
    for (int i = 1; i < CAP_CORNERS; i++) {
      double share = (double) i / CAP_CORNERS;
      Point chord = from.plus(to.minus(from).times(share));
      corners.add(chord.plus(outwards.times(4 * rise * share * (1 - share))));
    }
  }
}
