package org.counterpull.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.registry.FormulaRegistry;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The published checks, each worked by what the plan uses, and the book that shows them. With the
 * system property {@code book=write} the book in docs is written anew; otherwise it must be what
 * the checks give today.
 */
class VerificationBookTest {
  private static final Path BOOK = Path.of("docs", "verification.md");
  private static final Map<Chapter, List<Worked>> WORKED = new LinkedHashMap<>();

  static {
    Chapter.ALL.forEach(chapter -> WORKED.put(chapter, chapter.worked()));
  }

  @TempDir private static Path folder;
  private static List<Reported> reported = List.of();

  @BeforeAll
  static void runTheReportedCases() throws IOException {
    reported = Reported.all(folder);
  }

  // Bands as wide as their caveats; where ours falls outside, the file says so and why.
  @Test
  void theReportedCasesComeOutAsTheirFilesSay() {
    assertThat(reported).hasSizeGreaterThanOrEqualTo(5);
    for (Reported one : reported) {
      assertThat(one.verdict()).as(one.file().toString()).isEqualTo(one.head().get("verdict"));
      assertThat(one.low()).isLessThanOrEqualTo(one.expected());
      assertThat(one.high()).isGreaterThanOrEqualTo(one.expected());
    }
  }

  static List<Worked> published() {
    return WORKED.values().stream().flatMap(List::stream).toList();
  }

  @ParameterizedTest
  @MethodSource("published")
  void thePublishedValueIsMet(Worked worked) {
    double lastBits = 1e-12 + 1e-9 * worked.tolerance();
    assertThat(worked.value())
        .as(worked.source())
        .isCloseTo(worked.expected(), within(worked.tolerance() + lastBits));
    assertThat(worked.certainty()).isIn("read", "memory", "practice", "derived");
    assertThat(worked.source()).isNotBlank();
    assertThat(worked.unit()).isNotBlank();
  }

  /** Whole tables are in the book; none of them makes up the greater part of it. */
  @Test
  void thereAreAHundredFormulaChecksAndNoFamilyCrowdsOut() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    WORKED.get(Chapter.ALL.get(0)).forEach(w -> counts.merge(w.family().family(), 1, Integer::sum));
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    assertThat(all).isGreaterThanOrEqualTo(100);
    assertThat(counts).hasSizeGreaterThanOrEqualTo(30);
    assertThat(counts.values()).allMatch(count -> count <= all / 5);
  }

  @ParameterizedTest
  @MethodSource("shrinkageFormulas")
  void everyShrinkageFormulaOfTheCommandIsInTheBook(String name) {
    assertThat(FormulaRegistry.find(name)).isPresent();
    assertThat(published()).anyMatch(w -> name.equals(w.family().formula()));
  }

  static List<String> shrinkageFormulas() {
    return List.of(
        "tendon-force",
        "free-angle",
        "free-shrinkage",
        "butt-shrinkage-high",
        "butt-shrinkage-low",
        "restrained-shrinkage",
        "weld-camber",
        "girth-shrinkage",
        "buckling-stress",
        "tolerance");
  }

  @Test
  void theBookShowsWhatTheChecksGive() throws IOException {
    String book = book();
    if ("write".equals(System.getProperty("book"))) {
      Files.writeString(BOOK, book);
    }
    assertThat(BOOK)
        .content()
        .as("write it anew: mvn test -Dtest=VerificationBookTest -Dbook=write")
        .isEqualTo(book);
  }

  private static String book() throws IOException {
    StringBuilder text =
        new StringBuilder(
            """
            # The book of verification

            Written by `VerificationBookTest`. Certainty says how the reference value is known: read in the named work or a copy
            of it; memory; practice (common practice, no source); derived by another route. Allowed is half a unit of the last
            printed digit unless the data file says why it is not.
            """);
    WORKED.forEach((chapter, worked) -> text.append(chapter.text(worked)));
    return text.append(Reported.text(reported)).append(MeasuredWaits.section()).toString();
  }
}
