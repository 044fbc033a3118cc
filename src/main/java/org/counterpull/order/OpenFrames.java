package org.counterpull.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.counterpull.stock.Plate;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Pieces;
import org.counterpull.weldment.Weldment;

/** Rings of four long members or more without a plate or diagonal: what can rack. */
final class OpenFrames {
  private static final int LEAST_MEMBERS = 4;

  /** A member is at least so many times as long as its section: common practice, no source. */
  private static final double SLENDER = 6;

  private OpenFrames() {}

  /** The members of one such ring for each piece that has one. */
  static List<List<String>> of(Weldment weldment) {
    List<List<String>> frames = new ArrayList<>();
    for (List<String> piece : Pieces.of(weldment)) {
      boolean plated = piece.stream().map(weldment::part).anyMatch(p -> p.stock() instanceof Plate);
      List<String> ring = plated ? List.of() : ring(weldment, piece);
      if (ring.size() >= LEAST_MEMBERS) {
        frames.add(ring);
      }
    }
    return frames;
  }

  /** What is left of the slender members when every loose end has been taken off. */
  private static List<String> ring(Weldment weldment, List<String> piece) {
    Map<String, List<String>> next = new TreeMap<>();
    for (Joint joint : weldment.joints()) {
      if (piece.contains(joint.first())
          && slender(weldment, joint.first())
          && slender(weldment, joint.second())) {
        next.computeIfAbsent(joint.first(), k -> new ArrayList<>()).add(joint.second());
        next.computeIfAbsent(joint.second(), k -> new ArrayList<>()).add(joint.first());
      }
    }
    Deque<String> ends = new ArrayDeque<>();
    next.forEach((name, others) -> addEnd(ends, name, others));
    while (!ends.isEmpty()) {
      String end = ends.poll();
      for (String other : next.getOrDefault(end, List.of())) {
        next.get(other).remove(end);
        addEnd(ends, other, next.get(other));
      }
      next.remove(end);
    }
    return weldment.parts().stream().map(Part::name).filter(next::containsKey).toList();
  }

  private static void addEnd(Deque<String> ends, String name, List<String> others) {
    if (others.size() < 2 && !ends.contains(name)) {
      ends.add(name);
    }
  }

  private static boolean slender(Weldment weldment, String name) {
    Part part = weldment.part(name);
    return part.lengthMm() > SLENDER * Math.sqrt(part.stock().areaMm2())
        && part.lengthMm() > SLENDER * part.stock().thickestMm();
  }
}
