package org.counterpull.heatjob;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.weldment.Feature;

/** How warm a feature may get: the file's limit, else {@code heatjob/limits.yaml}. */
public final class FeatureLimits {
  private static final String RESOURCE = "/heatjob/limits.yaml";
  private static final JsonNode ROWS = read();

  private FeatureLimits() {}

  /** The limit; empty for features that heat does not spoil. */
  public static Optional<Double> of(Feature feature) {
    if (feature.limitC().isPresent()) {
      return feature.limitC();
    }
    String material = feature.material().orElse("").toLowerCase(Locale.ROOT);
    for (JsonNode row : ROWS) {
      boolean fits =
          row.has("word")
              ? !material.isEmpty() && material.contains(row.get("word").asText())
              : row.required("kind").asText().equals(feature.kind().words());
      if (fits) {
        return Optional.of(row.required("limitC").asDouble());
      }
    }
    return Optional.empty();
  }

  private static JsonNode read() {
    try (InputStream in = FeatureLimits.class.getResourceAsStream(RESOURCE)) {
      return new YAMLMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + RESOURCE, e);
    }
  }
}
