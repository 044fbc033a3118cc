package org.counterpull.mount;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;

/** What is taken where nothing else is said: {@code mount/shop.yaml}. */
final class ShopValue {
  private static final String RESOURCE = "/mount/shop.yaml";
  private static final Map<String, Double> VALUES = new TreeMap<>();

  static {
    for (JsonNode row : rows(RESOURCE)) {
      VALUES.put(row.required("name").asText(), row.required("value").asDouble());
    }
  }

  private ShopValue() {}

  /**
   * A value by its name in the file.
   *
   * @throws IllegalStateException when the file has none
   */
  static double of(String name) {
    Double value = VALUES.get(name);
    if (value == null) {
      throw new IllegalStateException(RESOURCE + " has no row \"" + name + "\"");
    }
    return value;
  }

  static JsonNode rows(String resource) {
    try (InputStream in = ShopValue.class.getResourceAsStream(resource)) {
      return new YAMLMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource, e);
    }
  }
}
