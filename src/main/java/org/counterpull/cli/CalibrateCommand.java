package org.counterpull.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.coupon.Calibrated;
import org.counterpull.coupon.Measure;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.report.CalibrationReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Turns readings on a job's test piece into factors with the band that remains. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description = {
      "Turns readings on the test piece of a job (see coupon) into the shop's own factors,",
      "says what each reading narrowed, and writes a file that later jobs include."
    },
    footer = {
      "%nExample:",
      "  counterpull calibrate cover.yaml --measured angle=1.1deg shrinkage=0.3mm --out shop.yaml"
    })
final class CalibrateCommand implements Callable<Integer> {
  private static final String EXAMPLE = "angle=1.1deg, shrinkage=0.3mm or camber=2.5mm";
  private static final double STEEPEST_DEG = 20;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "the weldment file that coupon was asked for")
  private Path file;

  @Option(
      names = "--measured",
      paramLabel = "WHAT=VALUE",
      arity = "1..*",
      required = true,
      description =
          "readings: angle, shrinkage, camber; the same one more than once for more pieces")
  private List<String> measured;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "the shop's file; if left out, shop-calibration.yaml beside FILE")
  private Path out;

  @Option(names = "--json", description = "print it as JSON instead of the summary")
  private boolean json;

  @Override
  public Integer call() {
    List<Calibrated.Measured> readings = measured.stream().map(CalibrateCommand::reading).toList();
    TestPiece piece = TestPiece.of(file);
    Calibrated calibrated = Calibrated.of(piece.weldment(), piece.coupon(), readings);
    CalibrationReport report = new CalibrationReport(piece.weldment(), calibrated, piece.pulls());
    Path target = out == null ? file.resolveSibling("shop-calibration.yaml") : out;
    write(target, report.shopFile());
    PrintWriter answer = spec.commandLine().getOut();
    if (json) {
      answer.println(JsonText.write(report.json()));
    } else {
      answer.println(report.summary().stripTrailing());
      answer.println("\nwritten: " + target);
      answer.println("Later plans use it with: include: " + target.getFileName());
    }
    return ExitCode.DONE;
  }

  private static Calibrated.Measured reading(String text) {
    String[] halves = text.split("=", 2);
    Measure measure =
        Measure.named(halves[0].strip())
            .orElseThrow(
                () ->
                    new BadInput(
                        "--measured: \"" + halves[0] + "\" can't be read off it\nTry: " + EXAMPLE));
    if (halves.length < 2) {
      throw new BadInput("--measured: " + text + " has no value\nTry: " + EXAMPLE);
    }
    try {
      double value =
          switch (measure) {
            case ANGLE -> radians(halves[1]);
            case SHRINKAGE, CAMBER -> QuantityParser.parseLengthMm(halves[1], LengthUnit.MM);
          };
      if (value > 0) {
        return new Calibrated.Measured(measure, value);
      }
    } catch (QuantityException e) {
      throw new BadInput("--measured: " + text + ": " + e.getMessage() + "\nTry: " + EXAMPLE);
    }
    throw new BadInput(
        "--measured: " + text + " is not above 0: a reading has a size\nTry: " + EXAMPLE);
  }

  private static double radians(String text) {
    double degrees = QuantityParser.parseAngleDeg(text);
    if (degrees > STEEPEST_DEG) {
      throw new BadInput("--measured: an angle of " + text + " is no shrinkage\nTry: " + EXAMPLE);
    }
    return Math.toRadians(degrees);
  }

  /** A file that somebody else wrote is left alone. */
  private static void write(Path target, String text) {
    try {
      if (Files.exists(target)
          && !Files.readString(target, StandardCharsets.UTF_8).startsWith(CalibrationReport.HEAD)) {
        throw new BadInput(
            "--out: "
                + target
                + " is there already and holds other things\n"
                + "Try: a new file, and include both");
      }
      Files.writeString(target, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new BadInput(
          "--out: nothing can be written to " + target + "\nTry: a folder that you may write to");
    }
  }
}
