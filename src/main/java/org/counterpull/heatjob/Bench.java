package org.counterpull.heatjob;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;

/** What the heat of a job is taken to be where the file is silent: {@code heatjob/bench.yaml}. */
final class Bench {
  private static final String RESOURCE = "/heatjob/bench.yaml";
  private static final Map<String, Double> VALUES = read();

  private Bench() {}

  /**
   * A value by its name in the file.
   *
   * @throws IllegalStateException when the file has none
   */
  static double value(String name) {
    Double value = VALUES.get(name);
    if (value == null) {
      throw new IllegalStateException(RESOURCE + " has no row \"" + name + "\"");
    }
    return value;
  }

  private static Map<String, Double> read() {
    try (InputStream in = Bench.class.getResourceAsStream(RESOURCE)) {
      Map<String, Double> values = new TreeMap<>();
      for (JsonNode row : new YAMLMapper().readTree(in)) {
        values.put(row.required("name").asText(), row.required("value").asDouble());
      }
      return values;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
