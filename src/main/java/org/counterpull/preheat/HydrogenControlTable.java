package org.counterpull.preheat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The temperatures of the hydrogen control method, kept in {@code preheat/hydrogen-control.csv}.
 */
final class HydrogenControlTable {
  private static final String RESOURCE = "/preheat/hydrogen-control.csv";
  private static final int GROUPS = 7;
  private static final List<double[]> ROWS = load();

  private HydrogenControlTable() {}

  /** Least preheat in F, 32 for none; rows by restraint then thickness, columns by group. */
  static double preheatF(int row, int group) {
    return ROWS.get(row)[group];
  }

  private static List<double[]> load() {
    List<double[]> rows = new ArrayList<>();
    try (InputStream in = HydrogenControlTable.class.getResourceAsStream(RESOURCE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      lines.readLine(); // column names
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        rows.add(row(line.split(",")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }

  /** Cells behind restraint and thickness; below room temperature means 32 F, no preheat. */
  private static double[] row(String[] cells) {
    double[] temperaturesF = new double[GROUPS];
    for (int i = 0; i < temperaturesF.length; i++) {
      String cell = cells[i + 2];
      temperaturesF[i] = cell.equals("<65") ? 32 : Double.parseDouble(cell);
    }
    return temperaturesF;
  }
}
