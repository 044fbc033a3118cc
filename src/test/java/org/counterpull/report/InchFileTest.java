package org.counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.counterpull.cli.CommandRun;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A shop that writes inches reads inches. */
class InchFileTest {
  private static final String FILE =
      """
      weldment: inch bracket
      units: in
      steel: A36
      parts:
        base: {stock: flat 6 x 1/2, length: 12, start: [0, 0, 0], along: x, up: z}
        rib: {stock: flat 4 x 1/2, length: 6, onto: base, face: top, set: standing along, at: middle}
        tail: {stock: flat 6 x 1/2, length: 12, start: [12, 0, 0], along: x, up: z}
      joints:
        rib: {between: [rib, base], weld: fillet, leg: 1/4, sides: [front, back]}
        seam: {between: [tail, base], penetration: full, sides: [top, bottom]}
      machines:
        mag: {process: mag, current: 30..300 A, duty: 60% at 300 A, supply: 400 V 32 A three-phase, wire: 0.045 in ER70S-6, gas: Ar + 18 CO2}
      """;

  @TempDir Path folder;

  private final Sentences inch = new Measures(LengthUnit.IN).sentences();

  private List<String> lines(String name) throws IOException {
    Path file = Files.writeString(folder.resolve("bracket.yaml"), FILE);
    CommandRun run =
        CommandRun.of("plan", file.toString(), "--heat", "none", "--out", folder.toString());
    assertThat(run.err()).isEmpty();
    return Files.readAllLines(folder.resolve(name));
  }

  private static Stream<String> section(List<String> lines, String title) {
    return lines.stream()
        .dropWhile(line -> !line.equals("## " + title))
        .skip(1)
        .takeWhile(line -> !line.startsWith("## "));
  }

  /** Millimetres stand only in brackets behind the inches, or in compound units. */
  @Test
  void stepsAndJointsAreInInches() throws IOException {
    List<String> plan = lines("plan.md");
    for (String title : List.of("Steps", "Joint rib", "Joint seam")) {
      assertThat(section(plan, title)).as(title).isNotEmpty();
      assertThat(section(plan, title).filter(line -> !line.startsWith("|")))
          .as(title)
          .map(line -> line.replaceAll("\\([^()]* mm\\)", ""))
          .noneMatch(line -> line.matches(".*\\d mm(?![\\w\u00b2\u00b3/]).*"));
    }
    assertThat(section(plan, "Steps")).anyMatch(l -> l.contains("Weld rib/front: 4 in, 1 pass"));
    assertThat(section(plan, "Steps")).anyMatch(l -> l.contains("to bright metal, 1 in each side"));
  }

  // 1 in is 25.4 mm; 80 C is 176 F.
  // 1.5 mm lies within 0.1 mm of a sixteenth.
  @ParameterizedTest
  @CsvSource({
    "Weld a/left: 304.8 mm,'Weld a/left: 12 in'",
    "leave a root face of 1.5 mm,leave a root face of 1/16 in",
    "a flat of 25.4 x 12.7 mm,a flat of 1 x 1/2 in",
    "Preheat a to 80 C for its tacks,Preheat a to 176 F for its tacks",
    "between 100 to 200 mm,between 3-15/16 to 7-7/8 in",
    "'Cut 1 x flat 152.4 x 12.7, 304.8 mm','Cut 1 x flat 6 x 1/2 in, 12 in'",
    "less 0 mm for the root gap,less 0 in for the root gap",
    "14 mm2 at 5 mm/s and 1.2 kJ/mm,14 mm2 at 5 mm/s and 1.2 kJ/mm",
    "typical C 0.13 under Ar + 18 CO2,typical C 0.13 under Ar + 18 CO2",
    "EN 1011-2 C.3,EN 1011-2 C.3"
  })
  void sentencesTurnOver(String metric, String inches) {
    assertThat(inch.of(metric)).isEqualTo(inches);
    assertThat(new Measures(LengthUnit.MM).sentences().of(metric)).isEqualTo(metric);
  }
}
