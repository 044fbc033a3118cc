package org.counterpull.reading;

/** Says in a shop's words what a YAML scanner stumbled over. */
final class YamlFault {

  private YamlFault() {}

  static FaultyText of(String problem, Place place, String text) {
    String said = problem == null ? "" : problem;
    char there = characterAt(text, place);
    if (there == '\t' || said.contains("TAB") || said.contains("\\t")) {
      return new FaultyText(
          place, "there is a tab where YAML wants spaces", "spaces only to indent lines");
    }
    if (said.contains("unexpected end of stream") || there == 0) {
      return new FaultyText(
          place,
          "the file ends in the middle of a bracket or quotation mark",
          "close what was opened above");
    }
    if (said.contains("mapping values are not allowed")) {
      return new FaultyText(
          place,
          "there is a \":\" too many, or the line is indented differently from its neighbours",
          "one \"key: value\" a line, or quotation marks around a text with \": \" in it");
    }
    if (said.contains("could not find expected ':'") || said.contains("expected <block end>")) {
      return new FaultyText(
          place,
          "this line does not fit under the one above it",
          "\"key: value\" with the same indent as the other keys of its group");
    }
    if (said.contains("',' or '}'") || said.contains("',' or ']'")) {
      return new FaultyText(
          place,
          "a comma or a closing bracket is missing in front of this",
          "{key: value, key: value} or [a, b, c] with every bracket closed");
    }
    if (said.contains("cannot start any token")) {
      return new FaultyText(
          place,
          "a value can't start with " + Problems.quote(String.valueOf(there)),
          "quotation marks around the value");
    }
    return new FaultyText(
        place,
        "the text is no YAML from here" + (said.isEmpty() ? "" : ": " + firstLine(said)),
        "one \"key: value\" a line; quotation marks around a text with special characters");
  }

  private static String firstLine(String said) {
    return said.lines().findFirst().orElse("").replaceAll("\\p{Cntrl}", "?");
  }

  /** The character at a place; 0 behind the end. */
  private static char characterAt(String text, Place place) {
    int start = 0;
    for (int line = 1; line < place.line(); line++) {
      start = text.indexOf('\n', start) + 1;
      if (start == 0) {
        return 0;
      }
    }
    int index = start + place.column() - 1;
    return index < text.length() ? text.charAt(index) : 0;
  }
}
