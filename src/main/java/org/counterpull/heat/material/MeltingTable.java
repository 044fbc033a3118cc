package org.counterpull.heat.material;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads {@code melting.csv}: the stated values above the standards' ranges. */
final class MeltingTable {
  private static final String RESOURCE = "/heat/melting.csv";

  private MeltingTable() {}

  /** The values of one material. */
  static Melting of(String material) {
    Map<String, Double> values = rows(material);
    return new Melting(
        values.get("solidus"),
        values.get("liquidus"),
        values.get("latent heat"),
        values.get("liquid conductivity"));
  }

  private static Map<String, Double> rows(String material) {
    Map<String, Double> values = new LinkedHashMap<>();
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                MeltingTable.class.getResourceAsStream(RESOURCE), StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        String[] columns = line.split(",", 5);
        if (columns[0].equals(material)) {
          values.put(columns[1], Double.valueOf(columns[2]));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return values;
  }
}
