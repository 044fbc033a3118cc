package org.counterpull.machine;

import java.util.List;
import java.util.Optional;

/**
 * What a machine's front shows and what its dials stand for.
 *
 * @param shows what can be read or set on it; empty where the shop doesn't say
 * @param dials charts of its dials; empty for a machine with displays
 */
public record Panel(List<Reading> shows, List<Dial> dials) {
  /** A machine that shows all its figures. */
  public static final Panel PLAIN = new Panel(List.of(), List.of());

  /** A figure that is set. */
  public enum Reading {
    CURRENT("current", "A"),
    VOLTAGE("voltage", "V"),
    WIRE_FEED("wire feed", "m/min");

    private final String word;
    private final String unit;

    Reading(String word, String unit) {
      this.word = word;
      this.unit = unit;
    }

    /** The word in files and on plans. */
    public String word() {
      return word;
    }

    /** Unit of the figure. */
    public String unit() {
      return unit;
    }
  }

  public Panel {
    shows = List.copyOf(shows);
    dials = List.copyOf(dials);
  }

  /** The dial for a figure. */
  public Optional<Dial> dial(Reading reading) {
    return dials.stream().filter(d -> d.reading() == reading).findFirst();
  }

  /** Whether the plan prints a figure: nothing said shows all. */
  public boolean prints(Reading reading) {
    return shows.isEmpty() && dials.isEmpty()
        || shows.contains(reading)
        || dial(reading).isPresent();
  }
}
