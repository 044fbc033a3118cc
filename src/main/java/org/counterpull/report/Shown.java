package org.counterpull.report;

import org.counterpull.weldment.Check;

/**
 * A quantity as it stands on a plan: in the units of the file, with the other units beside it.
 *
 * @param first in the file's units
 * @param other in the others; empty where there are none
 */
record Shown(String first, String other) {
  static Shown only(String text) {
    return new Shown(text, "");
  }

  /** As plain text. */
  String text() {
    return other.isEmpty() ? first : first + " (" + other + ")";
  }

  /** A part, or one of its faces, that is measured. */
  static String subject(Check.Subject subject) {
    return subject.face().map(face -> subject.part() + "/" + face.word()).orElse(subject.part());
  }
}
