package org.counterpull.verification;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;

/** Waits of the examples in the superposed and in the full model, as the book shows them. */
public final class MeasuredWaits {
  private MeasuredWaits() {}

  /** One pass before which the metal must cool. */
  public record Row(String example, String pass, double fullS, double superposedS) {}

  /** The recorded row of a pass. */
  public static Row row(String example, String pass) throws IOException {
    return rows().stream()
        .filter(r -> r.example().equals(example) && r.pass().equals(pass))
        .findFirst()
        .orElseThrow(() -> new AssertionError("waits.yaml has no " + example + ", " + pass));
  }

  static List<Row> rows() throws IOException {
    try (InputStream data = MeasuredWaits.class.getResourceAsStream("/verification/waits.yaml")) {
      return new ObjectMapper(new YAMLFactory()).readValue(data, new TypeReference<>() {});
    }
  }

  /** The section of the book. */
  static String section() throws IOException {
    StringBuilder text =
        new StringBuilder(
            """

            ## Waits: the superposed model against the full one

            Least waits for the metal before a pass of an example, at the same moment of the same job, both at `quick`:
            measured by `VerifiedWaitsTest`, recorded in `src/test/resources/verification/waits.yaml`. Allowed: 10 % of the
            full model's wait, or 5 s. Passes that need no wait in either model are left out.

            | example | pass | full, s | superposed, s | difference, s | allowed, s |
            |---|---|---:|---:|---:|---:|
            """);
    for (Row row : rows()) {
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %s | %.1f | %.1f | %.1f | %.1f |\n",
              row.example(),
              row.pass(),
              row.fullS(),
              row.superposedS(),
              row.superposedS() - row.fullS(),
              Math.max(5, 0.1 * row.fullS())));
    }
    return text.toString();
  }
}
