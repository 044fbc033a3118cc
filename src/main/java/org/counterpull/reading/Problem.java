package org.counterpull.reading;

/**
 * One thing that is wrong with a file, and what to write instead.
 *
 * @param file as the user named it
 * @param line from 1
 * @param column from 1, in characters
 * @param path where in the file, such as {@code parts.heel.stock}; items of lists count from 1:
 *     {@code before[2].first}; empty for the whole file
 * @param what is wrong, with the value as written
 * @param tryThis what to write instead
 */
public record Problem(String file, int line, int column, String path, String what, String tryThis) {

  /** The stable form in two lines: where and what, then the mend. */
  public String text() {
    String where = file + ":" + line + ":" + column + ": ";
    return where + (path.isEmpty() ? "" : path + ": ") + what + "\n    Try: " + tryThis;
  }
}
