package org.counterpull.reading;

/**
 * The JSON Schema (2020-12) of weldment files, for editors that complete and check. The reader
 * itself looks closer than a schema can.
 */
public final class WeldmentSchema {

  private WeldmentSchema() {}

  /** The schema as text. */
  public static String text() {
    return Resource.text("/schema/weldment.schema.json");
  }
}
