package org.counterpull.procedure;

import java.util.List;

/**
 * Answer of a book.
 *
 * @param procedure the row, or the settings between two rows
 * @param from ids of the rows it comes from: one, or two where it was interpolated
 */
public record Found(Procedure procedure, List<String> from) {
  public Found {
    from = List.copyOf(from);
  }

  /** The settings lie between two rows. */
  public boolean interpolated() {
    return from.size() > 1;
  }

  /** Where the settings come from, as printed. */
  public String explanation() {
    return interpolated()
        ? "interpolated between " + from.get(0) + " and " + from.get(1)
        : "row " + from.get(0);
  }
}
