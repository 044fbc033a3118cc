package org.counterpull.reading;

/**
 * One key that a file may have.
 *
 * @param name as written
 * @param form what may stand behind it
 * @param meaning in a sentence, with the unit of a bare number
 * @param otherwise what applies when it is left out
 * @param example a value
 */
record Key(String name, Form form, String meaning, String otherwise, String example) {
  static final String NEEDED = "needed";

  boolean needed() {
    return otherwise.equals(NEEDED);
  }
}
