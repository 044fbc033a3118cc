package org.counterpull.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Printed;
import org.counterpull.registry.FormulaRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The published checks, each worked by the registry that users ask too, and the book that shows
 * them. With the system property {@code book=write} the book in docs is written anew; otherwise it
 * must be what the checks give today.
 */
class VerificationBookTest {
  private static final Path BOOK = Path.of("docs", "verification.md");

  /** One family of checks as the data file has it. */
  record Family(
      String family,
      String formula,
      Double scale,
      String unit,
      String note,
      List<PublishedCase> cases) {}

  /** One check as the data file has it. */
  record PublishedCase(
      Map<String, String> arguments,
      double expected,
      double tolerance,
      String certainty,
      String source,
      String why) {}

  /** One check, worked. */
  record Worked(Family family, PublishedCase published, Computed ours) {
    double value() {
      return ours.value() * (family.scale() == null ? 1 : family.scale());
    }

    String unit() {
      return family.unit() == null ? ours.unit() : family.unit();
    }

    @Override
    public String toString() {
      return family.family() + " " + published.arguments();
    }
  }

  static List<Worked> published() throws IOException {
    try (InputStream data =
        VerificationBookTest.class.getResourceAsStream("/verification/formulas.yaml")) {
      List<Family> families =
          new ObjectMapper(new YAMLFactory()).readValue(data, new TypeReference<>() {});
      List<Worked> worked = new ArrayList<>();
      for (Family family : families) {
        for (PublishedCase published : family.cases()) {
          Computed ours =
              FormulaRegistry.find(family.formula())
                  .orElseThrow()
                  .evaluate(published.arguments())
                  .result();
          worked.add(new Worked(family, published, ours));
        }
      }
      return worked;
    }
  }

  @ParameterizedTest
  @MethodSource("published")
  void thePublishedValueIsMet(Worked worked) {
    assertThat(worked.value())
        .as(worked.published().source())
        .isCloseTo(worked.published().expected(), within(worked.published().tolerance() + 1e-12));
  }

  @Test
  void thereAreTwentyFiveChecksAndNoFamilyCrowdsOut() throws IOException {
    Map<String, Integer> counts = new LinkedHashMap<>();
    published().forEach(w -> counts.merge(w.family().family(), 1, Integer::sum));
    assertThat(counts.values()).allMatch(count -> count <= 4);
    assertThat(counts.values().stream().mapToInt(Integer::intValue).sum())
        .isGreaterThanOrEqualTo(25);
  }

  @Test
  void theBookShowsWhatTheChecksGive() throws IOException {
    String book = book(published());
    if ("write".equals(System.getProperty("book"))) {
      Files.writeString(BOOK, book);
    }
    assertThat(BOOK)
        .content()
        .as("write it anew: mvn test -Dtest=VerificationBookTest -Dbook=write")
        .isEqualTo(book);
  }

  private static String book(List<Worked> checks) {
    StringBuilder text =
        new StringBuilder(
            """
            # The book of verification: formulas

            Written by `VerificationBookTest` from `src/test/resources/verification/formulas.yaml`. Each row is worked by the
            registry that the `formula` command and the plan use. Certainty says how the reference value is known: read in the
            named work or a copy of it; memory; practice (common practice, no source); derived by another route.

            | family | formula | arguments | source | certainty | reference | ours | difference | allowed | unit |
            |---|---|---|---|---|---:|---:|---:|---:|---|
            """);
    for (Worked check : checks) {
      double expected = check.published().expected();
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | `%s` | %s | %s | %s | %s | %s | %s | %s | %s |%n",
              check.family().family(),
              check.family().formula(),
              arguments(check.published().arguments()),
              check.published().source(),
              check.published().certainty(),
              Printed.number(expected, 6),
              Printed.number(check.value(), 6),
              Printed.number(check.value() - expected, 2),
              Printed.number(check.published().tolerance(), 2),
              check.unit()));
    }
    return text.toString().replace("\r\n", "\n");
  }

  private static String arguments(Map<String, String> arguments) {
    List<String> words = new ArrayList<>();
    arguments.forEach((name, value) -> words.add(name + "=" + value));
    return String.join(" ", words);
  }
}
