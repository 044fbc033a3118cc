package org.counterpull.verification;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.counterpull.quantity.Printed;

/**
 * A chapter of the book of verification: a heading, what its rows are, and the data file that they
 * come from.
 */
record Chapter(String title, String resource, String intro) {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  static final List<Chapter> ALL =
      List.of(
          new Chapter(
              "Formulas",
              "formulas.yaml",
              "Each row is worked by the registry that the `formula` command and the plan use."),
          new Chapter(
              "Welds: sections, passes, sizes, strengths",
              "weld.yaml",
              "Names without a hyphen are worked by the classes of the packages `groove`, `fillet`,"
                  + " `feeding`, `strength` and `jointplan`, the others by the registry."),
          new Chapter(
              "Shrinkage of one weld",
              "shrinkage.yaml",
              "Published closed forms and tables. Names without a hyphen are worked by the classes"
                  + " of the package `shrinkage`, the others by the registry."),
          new Chapter(
              "The shape engine",
              "shape.yaml",
              "Each row is solved by the kernel of the package `pull`: assembled, condensed and"
                  + " welded segment by segment."),
          new Chapter(
              "The zone rule",
              "zone.yaml",
              "Shrinkage read off a field of peak temperatures, against the closed forms. A row"
                  + " that compares two of our own ways shows their ratio, and the reference is"
                  + " one."),
          new Chapter(
              "The heat engine",
              "heat.yaml",
              "Each row is solved by the kernel of the package `heat`, at normal fineness, and read"
                  + " off its field."));

  List<Worked> worked() {
    try (InputStream data = Chapter.class.getResourceAsStream("/verification/" + resource)) {
      List<Family> families = YAML.readValue(data, new TypeReference<>() {});
      List<Worked> worked = new ArrayList<>();
      for (Family family : families) {
        for (PublishedCase published : family.cases()) {
          worked.add(Worked.of(family, published));
        }
      }
      return worked;
    } catch (IOException e) {
      throw new UncheckedIOException(resource, e);
    }
  }

  String text(List<Worked> worked) {
    StringBuilder text = new StringBuilder("\n## ").append(title).append("\n\n");
    text.append("From `src/test/resources/verification/").append(resource).append("`. ");
    text.append(intro).append("\n\n");
    text.append(
        "| family | worked by | arguments | source | certainty | reference | ours | difference |"
            + " allowed | unit |\n|---|---|---|---|---|---:|---:|---:|---:|---|\n");
    worked.forEach(check -> text.append(row(check)));
    return text.toString();
  }

  private static String row(Worked check) {
    return String.format(
        Locale.ROOT,
        "| %s | `%s` | %s | %s | %s | %s | %s | %s | %s | %s |\n",
        check.family().family(),
        check.family().name(),
        arguments(check.published().arguments()),
        check.source(),
        check.certainty(),
        Printed.number(check.expected(), 6),
        ours(check),
        difference(check),
        Printed.number(check.tolerance(), 2)
            + (check.published().why() == null ? "" : ": " + check.published().why()),
        check.unit());
  }

  /** What should vanish does so but for rounding, which is shown by its power of ten. */
  private static String ours(Worked check) {
    return check.expected() == 0 && check.value() != 0
        ? decade(check.value())
        : Printed.number(check.value(), 6);
  }

  private static String difference(Worked check) {
    double difference = check.value() - check.expected();
    boolean rounding = check.expected() == 0 || Math.abs(difference) < 1e-11;
    return difference != 0 && rounding ? decade(difference) : Printed.number(difference, 2);
  }

  private static String decade(double value) {
    return "below 1e" + (int) Math.ceil(Math.log10(Math.abs(value)));
  }

  private static String arguments(Map<String, String> arguments) {
    List<String> words = new ArrayList<>();
    arguments.forEach((name, value) -> words.add(name + "=" + value));
    return String.join(" ", words);
  }
}
