package org.counterpull.shrinkage;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of a data table that lies beside this package; lines that begin with # are remarks. */
final class Rows {
  private Rows() {}

  static List<Map<String, String>> of(String table) {
    try (InputStream in = Rows.class.getResourceAsStream(table)) {
      if (in == null) {
        throw new IllegalStateException("data table " + table + " is missing");
      }
      List<String> lines =
          new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .toList();
      String[] names = lines.get(0).split(",");
      List<Map<String, String>> rows = new ArrayList<>();
      for (String line : lines.subList(1, lines.size())) {
        rows.add(row(table, names, line.split(",")));
      }
      return List.copyOf(rows);
    } catch (IOException e) {
      throw new UncheckedIOException("data table " + table, e);
    }
  }

  private static Map<String, String> row(String table, String[] names, String[] cells) {
    if (cells.length != names.length) {
      throw new IllegalStateException(
          "data table " + table + " has a row of " + cells.length + " cells, not " + names.length);
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < names.length; i++) {
      row.put(names[i], cells[i].strip());
    }
    return row;
  }
}
