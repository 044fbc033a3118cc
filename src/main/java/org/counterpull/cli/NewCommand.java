package org.counterpull.cli;

import java.util.concurrent.Callable;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.reading.StartingFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints a weldment file to start from. */
@Command(
    name = "new",
    mixinStandardHelpOptions = true,
    description = "Prints a commented weldment file to start from.",
    footer = {"%nExample:", "  counterpull new --units in > gate.yaml"})
final class NewCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  /** The two unit worlds of files. */
  enum Units {
    MM,
    IN
  }

  @Option(
      names = "--units",
      paramLabel = "in|mm",
      description = "unit of bare numbers; mm if left out")
  private Units units = Units.MM;

  @Override
  public Integer call() {
    spec.commandLine()
        .getOut()
        .print(
            StartingFile.text(
                switch (units) {
                  case MM -> LengthUnit.MM;
                  case IN -> LengthUnit.IN;
                }));
    return ExitCode.DONE;
  }
}
