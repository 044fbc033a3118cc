package org.counterpull.fit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a data table that lies beside this package; lines that begin with # are remarks. */
final class Rows {
  private Rows() {}

  /** Cells of every row, the heading first. */
  static List<String[]> of(String table) {
    try (InputStream in = Rows.class.getResourceAsStream(table)) {
      if (in == null) {
        throw new IllegalStateException("data table " + table + " is missing");
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
          .lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split(","))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException("data table " + table, e);
    }
  }
}
