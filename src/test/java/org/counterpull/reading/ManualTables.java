package org.counterpull.reading;

/** The key tables as the manual prints them. */
final class ManualTables {

  private ManualTables() {}

  static String of(KeyTable table) {
    StringBuilder text =
        new StringBuilder("| key | meaning | left out | example |\n|---|---|---|---|\n");
    for (Key key : table.keys()) {
      text.append("| `" + key.name() + "` | " + meaning(key) + " | ")
          .append((key.needed() ? "**needed**" : key.otherwise()) + " | ")
          .append("`" + key.example() + "` |\n");
    }
    return text.toString();
  }

  private static String meaning(Key key) {
    return key.form().choices().isEmpty()
        ? key.meaning()
        : key.meaning() + ": " + String.join(", ", key.form().choices());
  }
}
