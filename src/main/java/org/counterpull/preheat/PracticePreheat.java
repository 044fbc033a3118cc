package org.counterpull.preheat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Preheat of hardening steels that the formulas don't reach, as handbooks give it: the upper end of
 * the range that is usual for the thickness.
 *
 * <p><b>Source:</b> from memory: ASM Handbook vol. 6, AWS Welding Handbook. <b>Valid for:</b> the
 * grades of {@code preheat/practice.csv} with low-hydrogen filler; thin tube by TIG takes less.
 */
public final class PracticePreheat {
  public static final Formula FORMULA =
      new Formula(
          "preheat-practice",
          "usual preheat of a hardening steel, upper end of the range",
          "C",
          "from memory: ASM Handbook vol. 6; AWS Welding Handbook");

  private static final String RESOURCE = "/preheat/practice.csv";
  private static final List<Row> ROWS = load();

  private record Row(String grade, double upToMm, double toC) {}

  private PracticePreheat() {}

  /** Usual preheat; empty for a grade that is not in the table. */
  public static Optional<Computed> of(String grade, double thicknessMm) {
    Require.positive("thickness", thicknessMm, "mm");
    return ROWS.stream()
        .filter(row -> row.grade().equals(grade) && thicknessMm <= row.upToMm())
        .findFirst()
        .map(row -> FORMULA.result(row.toC()));
  }

  private static List<Row> load() {
    try (InputStream in = PracticePreheat.class.getResourceAsStream(RESOURCE);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines
          .lines()
          .skip(1)
          .map(line -> line.split(";", -1))
          .map(c -> new Row(c[0], Double.parseDouble(c[1]), Double.parseDouble(c[3])))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
