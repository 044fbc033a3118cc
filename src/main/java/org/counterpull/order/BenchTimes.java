package org.counterpull.order;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;

/** How long things take at the bench: {@code order/bench-times.yaml}. */
final class BenchTimes {
  private static final String RESOURCE = "/order/bench-times.yaml";

  private static final Map<String, Double> VALUES = read();

  private BenchTimes() {}

  /** Active time of one step of that sort, s; zero for those whose time comes from the heat. */
  static double seconds(StepTag tag) {
    return tag.kind() == Operation.Kind.COOL ? 0 : value(tag.words());
  }

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
    try (InputStream in = BenchTimes.class.getResourceAsStream(RESOURCE)) {
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
