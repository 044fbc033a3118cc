package org.counterpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From a job to its test piece, from readings to a shop's file, and back into the job. */
class CalibrateCommandTest {
  private static final String JOB =
      """
      weldment: bracket
      units: mm
      steel: S275JR
      parts:
        bar: {stock: flat 60 x 10, length: 600, start: [0, 0, 0]}
        tab: {stock: flat 60 x 8, length: 90, onto: bar, face: top, set: standing across}
      joints:
        tab: {between: [tab, bar], weld: fillet, leg: 5}
      checks:
        tab square: {square: [tab, bar], within: 0.5}
      machines:
        mag: {process: mag, current: 30..250 A, duty: 60% at 250 A, supply: 400 V 16 A three-phase}
      """;

  @TempDir private Path folder;

  private Path job(String head) throws IOException {
    Path file = folder.resolve("bracket.yaml");
    Files.writeString(file, head + JOB);
    return file;
  }

  private JsonNode json(CommandRun run) throws IOException {
    assertThat(run.code()).as(run.err()).isZero();
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void theTestPieceStandsForARunOfTheJob() throws IOException {
    Path file = job("");
    JsonNode piece =
        json(CommandRun.of("coupon", file.toString(), "--out", out("c").toString(), "--json"));
    assertThat(piece.get("run").asText()).startsWith("tab/");
    assertThat(piece.get("kind").asText()).isEqualTo("tee");
    assertThat(piece.get("plateMm").asDouble()).isEqualTo(10);
    assertThat(piece.get("otherMm").asDouble()).isEqualTo(8);
    // Flange 2 x 10, web 8: 20/28 of the heat; phi = 0.0233 (x/6.2) exp(1 - x/6.2).
    double x = piece.get("netHeatJPerMm").asDouble() * 20 / 28 / 100;
    assertThat(piece.get("expected").get("angleRad").asDouble())
        .isCloseTo(0.0233 * x / 6.2 * Math.exp(1 - x / 6.2), within(1e-9));
    double shares = 0;
    for (JsonNode share : piece.get("shares")) {
      shares += share.asDouble();
    }
    assertThat(shares).isCloseTo(1, within(1e-9));
    assertThat(out("c").resolve("coupon.svg")).content().contains("<svg").contains("punch marks");
    assertThat(out("c").resolve("coupon.md"))
        .content()
        .contains("What to cut", "How to weld it", "What to measure, cold");
  }

  // A reading that doubles the expected angle: log-normal update by hand, prior sigma ln 2 /
  // 1.64485, reading sigma of 12 % and 0.1 degrees. Read back from the included file it is the
  // same to the digits written, and the plan names it.
  @Test
  void readingsGoIntoAShopsFileAndComeBack() throws IOException {
    Path file = job("");
    Path shop = folder.resolve("shop.yaml");
    JsonNode piece =
        json(CommandRun.of("coupon", file.toString(), "--out", out("c").toString(), "--json"));
    double expectedDeg = Math.toDegrees(piece.get("expected").get("angleRad").asDouble());
    String reading = "angle=" + 1.5 * expectedDeg + "deg";
    JsonNode answer =
        json(
            CommandRun.of(
                "calibrate",
                file.toString(),
                "--measured",
                reading,
                "--out",
                shop.toString(),
                "--json"));
    double known = Math.pow(Math.log(2) / 1.6448536, 2);
    double read =
        Math.pow(Math.log(1.12), 2)
            + Math.pow(Math.log(1 + 0.1 / (1.5 * expectedDeg)) / 1.6448536, 2);
    double median = Math.exp(Math.log(1.5) * known / (known + read));
    double within = Math.exp(1.6448536 * Math.sqrt(1 / (1 / known + 1 / read)));
    JsonNode after = answer.get("factors").get(1).get("after");
    assertThat(answer.get("factors").get(1).get("effect").asText()).isEqualTo("angle");
    assertThat(after.get("median").asDouble()).isCloseTo(median, within(1e-6));
    assertThat(after.get("high").asDouble()).isCloseTo(median * within, within(1e-6));

    Path later = job("include: shop.yaml\n");
    Weldment weldment = ((ReadResult.Read) WeldmentReader.read(later)).weldment();
    FactorBand band = weldment.factor(WeldingProcess.MAG, Effect.ANGLE);
    assertThat(band.median()).isCloseTo(median, within(1e-4));
    assertThat(band.within()).isCloseTo(within, within(1e-4));
    assertThat(weldment.factor(WeldingProcess.MAG, Effect.ACROSS))
        .isEqualTo(FactorBand.published(Effect.ACROSS));
    assertThat(weldment.assumptions())
        .anyMatch(a -> a.where().equals("calibration.mag") && a.what().contains("from: tee of"));

    // A second piece goes on from there, and may write the same file again.
    CommandRun second =
        CommandRun.of(
            "calibrate", later.toString(), "--measured", reading, "--out", shop.toString());
    assertThat(second.code()).as(second.err()).isZero();
    assertThat(second.out()).contains("tab square:", "% of what it was", "include: shop.yaml");
    Weldment again = ((ReadResult.Read) WeldmentReader.read(later)).weldment();
    assertThat(again.factor(WeldingProcess.MAG, Effect.ANGLE).within()).isLessThan(band.within());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bend=1deg | can't be read off it",
        "angle | has no value",
        "angle=1kg | angle=1kg",
        "angle=45deg | is no shrinkage",
        "shrinkage=-0.1mm | is not above 0"
      })
  void badReadingsAreRefused(String reading, String message) throws IOException {
    CommandRun run =
        CommandRun.of(
            "calibrate",
            job("").toString(),
            "--measured=" + reading,
            "--out",
            out("shop.yaml").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(message).contains("Try: ");
    assertThat(out("shop.yaml")).doesNotExist();
  }

  @Test
  void anotherFileIsLeftAlone() throws IOException {
    Path mine = folder.resolve("mine.yaml");
    Files.writeString(mine, "machines: {}\n");
    CommandRun run =
        CommandRun.of(
            "calibrate", job("").toString(), "--measured", "angle=1deg", "--out", mine.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("holds other things");
    assertThat(mine).hasContent("machines: {}");
  }

  private Path out(String name) {
    return folder.resolve(name);
  }
}
