package org.counterpull.pulljob;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.counterpull.cli.CommandRun;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Free plates close by what their butt weld wants, whatever the gap between them. */
class ButtAcrossGapTest {
  @TempDir private Path folder;

  // 1 mm is fixed in the file and nothing holds the plates: they come together by 1 mm.
  @ParameterizedTest
  @ValueSource(doubles = {0, 2, 4})
  void freePlatesCloseByTheWholeShrinkage(double gapMm) throws Exception {
    String text =
        """
        weldment: butt
        units: mm
        steel: S275JR
        parts:
          left: {stock: flat 150 x 12, length: 40, start: [0, 0, 0]}
          right: {stock: flat 150 x 12, length: 40, start: [0, %s, 0]}
        joints:
          seam: {between: [right, left], weld: v, gap: %s}
        checks:
          width: {distance: [left/front, right/back], within: 2}
        runs:
          seam/top: {shrinkage: {across: 1}}
        order: [seam/top]
        """
            .formatted(150 + gapMm, gapMm);
    Path file = folder.resolve("butt.yaml");
    Files.writeString(file, text);
    CommandRun run =
        CommandRun.of("pull", file.toString(), "--json", "--out", folder.resolve("out").toString());
    JsonNode width = new ObjectMapper().readTree(run.out()).get("checks").get(0).get("released");
    assertThat(Math.abs(width.get("expectedMm").asDouble())).isCloseTo(1, within(0.02));
  }

  // Two plates of 300 x 12, tacked every 300 mm: nothing holds them but each other, so a weld of
  // any
  // length draws them together by what it wants, and a run on the other side by what it wants more.
  @ParameterizedTest
  @CsvSource({"150,1", "500,1", "1000,1", "500,2"})
  void tacksAndTheBeginningOfTheWeldDontHoldTheEnd(double lengthMm, int sides) throws Exception {
    String second = sides == 2 ? "  seam/bottom: {shrinkage: {across: 0.5}}\n" : "";
    String text =
        """
        weldment: butt
        units: mm
        steel: S275JR
        parts:
          left: {stock: flat 300 x 12, length: %1$s, start: [0, 0, 0]}
          right: {stock: flat 300 x 12, length: %1$s, start: [0, 302, 0]}
        joints:
          seam: {between: [right, left], weld: %2$s, gap: 2}
        checks:
          width: {distance: [left/front, right/back], within: 2}
        runs:
          seam/top: {shrinkage: {across: 1}}
        %3$s
        """
            .formatted(lengthMm, sides == 2 ? "double v" : "v", second);
    Path file = folder.resolve("long.yaml");
    Files.writeString(file, text);
    CommandRun run =
        CommandRun.of(
            "pull",
            file.toString(),
            "--order",
            "left-to-right",
            "--json",
            "--out",
            folder.resolve("out").toString());
    JsonNode width = new ObjectMapper().readTree(run.out()).get("checks").get(0).get("released");
    double wanted = sides == 2 ? 1.5 : 1;
    assertThat(Math.abs(width.get("expectedMm").asDouble())).isCloseTo(wanted, within(0.02));
  }
}
