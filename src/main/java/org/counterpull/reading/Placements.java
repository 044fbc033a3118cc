package org.counterpull.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Part;

/** Turns positions into frames, whatever the order in which parts are set onto each other. */
final class Placements {
  private final Section section;
  private final Notebook book;
  private final Map<String, PartDraft> drafts = new LinkedHashMap<>();
  private final Map<String, Optional<Frame>> frames = new LinkedHashMap<>();

  private Placements(Section section, Notebook book, List<PartDraft> drafts) {
    this.section = section;
    this.book = book;
    drafts.forEach(d -> this.drafts.put(d.name(), d));
  }

  /** The parts that can be placed, in file order; circles have been reported. */
  static List<Part> resolve(Section section, Notebook book, List<PartDraft> drafts) {
    Placements placements = new Placements(section, book, drafts);
    List<Part> parts = new ArrayList<>();
    for (PartDraft draft : drafts) {
      placements.place(draft.name());
      placements
          .frames
          .getOrDefault(draft.name(), Optional.empty())
          .filter(f -> placements.near(draft, f))
          .ifPresent(f -> parts.add(draft.placed(f)));
    }
    return parts;
  }

  /** Walks down to a part that is placed already, then back up. */
  private void place(String name) {
    Deque<String> waiting = new ArrayDeque<>();
    Set<String> seen = new LinkedHashSet<>();
    String next = name;
    while (!frames.containsKey(next)) {
      if (!seen.add(next)) {
        refuseCircle(next, List.copyOf(seen));
        break;
      }
      waiting.push(next);
      Optional<String> base = base(next);
      if (base.isEmpty()) {
        break;
      }
      next = base.get();
    }
    while (!waiting.isEmpty()) {
      String part = waiting.pop();
      frames.putIfAbsent(part, frame(part));
    }
  }

  private Optional<String> base(String name) {
    PartDraft draft = drafts.get(name);
    return draft != null
            && draft.position().isPresent()
            && draft.position().get() instanceof Position.Onto onto
        ? Optional.of(onto.base())
        : Optional.empty();
  }

  private Optional<Frame> frame(String name) {
    PartDraft draft = drafts.get(name);
    if (draft == null || draft.position().isEmpty()) {
      return Optional.empty();
    }
    Position position = draft.position().get();
    if (position instanceof Position.Fixed fixed) {
      return Optional.of(fixed.frame());
    }
    Position.Onto onto = (Position.Onto) position;
    return frames
        .getOrDefault(onto.base(), Optional.empty())
        .map(
            base ->
                Position.resolve(
                    onto, draft.body().box(), base, drafts.get(onto.base()).body().box()));
  }

  private void refuseCircle(String first, List<String> seen) {
    List<String> circle = seen.subList(seen.indexOf(first), seen.size());
    circle.forEach(member -> frames.put(member, Optional.empty()));
    section
        .entry(first)
        .ifPresent(
            e ->
                book.problems()
                    .add(
                        e.keyPlace(),
                        "parts." + first + ".onto",
                        "parts are set onto each other in a circle: " + String.join(", ", circle),
                        "place one of them with start: [x, y, z]"));
  }

  private boolean near(PartDraft draft, Frame frame) {
    Vector3D end = frame.outOf(new Vector3D(draft.body().lengthMm(), 0, 0));
    boolean near =
        frame.origin().getNormInf() <= 2 * Value.FARTHEST_MM
            && end.getNormInf() <= 2 * Value.FARTHEST_MM;
    if (!near) {
      section
          .entry(draft.name())
          .ifPresent(
              e ->
                  book.problems()
                      .add(
                          e.keyPlace(),
                          "parts." + draft.name(),
                          "the part lies more than 200 m from the weldment's origin",
                          "smaller distances"));
    }
    return near;
  }
}
