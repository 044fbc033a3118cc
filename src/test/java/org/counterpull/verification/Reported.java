package org.counterpull.verification;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.counterpull.cli.CommandRun;
import org.counterpull.quantity.Printed;

/**
 * A reported experiment that is a weldment file, run through the command {@code pull}. The head of
 * the file says what was measured, what lies within the reach of the method, and how ours is put
 * together: {@code from: check / divisor + check / divisor}; in degrees where the unit says so.
 */
record Reported(Path file, Map<String, String> head, double expected, double low, double high) {
  private static final Path FOLDER = Path.of("src/test/resources/pull/reported");

  static List<Reported> all(Path out) throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      List<Reported> all = new ArrayList<>();
      for (Path file : files.sorted().toList()) {
        all.add(of(file, out));
      }
      return all;
    }
  }

  private static Reported of(Path file, Path out) throws IOException {
    Map<String, String> head = head(file);
    CommandRun run =
        CommandRun.of(
            "pull",
            file.toString(),
            "--json",
            "--out",
            out.resolve(file.getFileName().toString()).toString());
    if (run.code() == 2 || run.code() == 3) {
      throw new IllegalStateException(file + ": " + run.err());
    }
    JsonNode checks = new ObjectMapper().readTree(run.out()).get("checks");
    double[] sum = new double[3];
    for (String term : head.get("from").split(" \\+ ")) {
      String[] parts = term.split(" / ");
      double divisor = parts.length > 1 ? Double.parseDouble(parts[1]) : 1;
      JsonNode released = released(checks, parts[0].strip());
      // A shortening is reported as a size: its band is turned with it and may go beyond 0.
      double sign = released.get("expectedMm").asDouble() < 0 ? -1 : 1;
      double[] three = {
        sign * released.get("expectedMm").asDouble(),
        sign * released.get("lowMm").asDouble(),
        sign * released.get("highMm").asDouble()
      };
      sum[0] += three[0] / divisor;
      sum[1] += Math.min(three[1], three[2]) / divisor;
      sum[2] += Math.max(three[1], three[2]) / divisor;
    }
    boolean degrees = head.get("unit").equals("degrees");
    for (int i = 0; degrees && i < 3; i++) {
      sum[i] = Math.toDegrees(Math.atan(sum[i]));
    }
    return new Reported(file, head, sum[0], sum[1], sum[2]);
  }

  private static JsonNode released(JsonNode checks, String name) {
    for (JsonNode check : checks) {
      if (check.get("name").asText().equals(name)) {
        return check.get("released");
      }
    }
    throw new IllegalArgumentException("no check " + name);
  }

  private static Map<String, String> head(Path file) throws IOException {
    Map<String, String> head = new LinkedHashMap<>();
    String key = "";
    for (String line : Files.readAllLines(file)) {
      if (!line.startsWith("# ")) {
        return head;
      }
      if (line.startsWith("#   ")) {
        head.merge(key, line.substring(3), String::concat);
      } else {
        key = line.substring(2, line.indexOf(": "));
        head.put(key, line.substring(line.indexOf(": ") + 2));
      }
    }
    return head;
  }

  /** Whether ours lies in what the head accepts: inside, outside, or shown where nothing is. */
  String verdict() {
    String accepted = head.get("accepted");
    if (accepted.equals("none")) {
      return "shown";
    }
    String[] ends = accepted.split(" to ");
    boolean inside =
        expected >= Double.parseDouble(ends[0]) && expected <= Double.parseDouble(ends[1]);
    return inside ? "inside" : "outside";
  }

  static String text(List<Reported> all) {
    StringBuilder text =
        new StringBuilder(
            """

            ## Reported experiments

            Each is a weldment file in `src/test/resources/pull/reported`, run through the command `pull`. Nothing is tuned for a
            case. Accepted is what the method is expected to reach with the caveat; ours may fall outside, and then the row says so.

            | file | source | certainty | reported | accepted | ours | 90 % band | unit | verdict | caveat |
            |---|---|---|---|---|---:|---|---|---|---|
            """);
    for (Reported r : all) {
      text.append(
          String.format(
              Locale.ROOT,
              "| `%s` | %s | %s | %s | %s | %s | %s to %s | %s | %s | %s |\n",
              r.file.getFileName(),
              r.head.get("source"),
              r.head.get("certainty"),
              r.head.get("reported"),
              r.head.get("accepted"),
              Printed.number(r.expected, 3),
              Printed.number(r.low, 3),
              Printed.number(r.high, 3),
              r.head.get("unit") + ", " + r.head.get("quantity"),
              r.verdict(),
              r.head.get("caveat")));
    }
    return text.toString();
  }
}
