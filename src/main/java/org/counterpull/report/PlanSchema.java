package org.counterpull.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema (2020-12) of plan.json. */
public final class PlanSchema {
  private static final String NAME = "/schema/plan.schema.json";

  private PlanSchema() {}

  /** The schema as text. */
  public static String text() {
    try (InputStream in = PlanSchema.class.getResourceAsStream(NAME)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(NAME, e);
    }
  }
}
