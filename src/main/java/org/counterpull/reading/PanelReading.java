package org.counterpull.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.counterpull.machine.Dial;
import org.counterpull.machine.Panel;
import org.counterpull.machine.Panel.Reading;
import org.counterpull.machine.PlateText;

/** Reads what a machine's front shows, and the charts of its dials. */
final class PanelReading {
  private PanelReading() {}

  /** The panel; empty after a fault was reported. */
  static Optional<Panel> read(Fields fields) {
    Optional<List<Reading>> shows =
        fields.has("shows")
            ? fields.get("shows").flatMap(v -> v.all(PanelReading::reading))
            : Optional.of(List.of());
    List<Dial> dials = new ArrayList<>();
    boolean faulty = shows.isEmpty();
    for (Reading reading : Reading.values()) {
      String key = reading.word() + " dial";
      if (fields.has(key)) {
        Optional<Dial> dial = fields.get(key).flatMap(v -> dial(v, reading));
        faulty |= dial.isEmpty();
        dial.ifPresent(dials::add);
      }
    }
    return faulty ? Optional.empty() : Optional.of(new Panel(shows.get(), dials));
  }

  private static Optional<Reading> reading(Value value) {
    Optional<String> text = value.text();
    Optional<Reading> reading =
        text.flatMap(
            word ->
                Arrays.stream(Reading.values())
                    .filter(r -> r.word().equalsIgnoreCase(word))
                    .findFirst());
    return text.isPresent() && reading.isEmpty()
        ? value.problem(
            Problems.quote(text.get()) + " is nothing that a machine shows",
            "current, voltage or wire feed")
        : reading;
  }

  private static Optional<Dial> dial(Value value, Reading reading) {
    Optional<List<Dial.Mark>> marks =
        value.all(v -> v.parsed(text -> PlateText.mark(text, reading)));
    if (marks.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new Dial(reading, marks.get()));
    } catch (IllegalArgumentException e) {
      return value.problem(e.getMessage(), value.example());
    }
  }
}
