package org.counterpull.mount;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.weldment.Feature;

/**
 * How warm something may get.
 *
 * @param longC for as long as one likes
 * @param shortC for some minutes
 * @param source where the figures come from
 */
public record HeatLimit(double longC, double shortC, String source) {
  private static final String RESOURCE = "/mount/limits.yaml";

  public HeatLimit {
    if (shortC < longC) {
      throw new IllegalArgumentException("short limit " + shortC + " C is below the long one");
    }
  }

  /**
   * The limits of a feature; empty where heat does not spoil it.
   *
   * @param kind what it is
   * @param material of a seal, bush or coating; empty where it isn't known
   * @param givenC the limit that the file gives
   */
  public static Optional<HeatLimit> of(
      Feature.Kind kind, Optional<String> material, Optional<Double> givenC) {
    if (givenC.isPresent()) {
      return givenC.map(c -> new HeatLimit(c, c, "the file"));
    }
    String word = material.orElse("").toLowerCase(Locale.ROOT);
    for (JsonNode row : ShopValue.rows(RESOURCE)) {
      boolean fits =
          row.has("word")
              ? !word.isEmpty() && word.contains(row.get("word").asText())
              : row.required("kind").asText().equals(kind.words());
      if (fits) {
        return Optional.of(
            new HeatLimit(
                row.required("longC").asDouble(),
                row.required("shortC").asDouble(),
                row.required("source").asText()));
      }
    }
    return Optional.empty();
  }

  /** Whether a peak and the time above the long limit are borne. */
  boolean holds(double peakC, double overLongS) {
    return peakC <= longC || peakC <= shortC && overLongS <= ShopValue.of("longest over limit");
  }
}
