package org.counterpull.report;

import java.util.List;

/**
 * A table of a plan, before it is Markdown or HTML.
 *
 * @param heads of the columns; the first column names the row
 * @param rows as many cells as heads
 */
record Table(List<String> heads, List<List<Shown>> rows) {
  Table {
    heads = List.copyOf(heads);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<Shown> row : rows) {
      if (row.size() != heads.size()) {
        throw new IllegalArgumentException(row.size() + " cells under " + heads.size() + " heads");
      }
    }
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  static List<Shown> row(Object... cells) {
    return java.util.Arrays.stream(cells)
        .map(cell -> cell instanceof Shown shown ? shown : Shown.only(cell.toString()))
        .toList();
  }
}
