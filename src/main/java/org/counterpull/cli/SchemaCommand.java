package org.counterpull.cli;

import java.util.concurrent.Callable;
import org.counterpull.reading.WeldmentSchema;
import org.counterpull.report.PlanSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the JSON Schema of what goes in, or of what comes out. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    description = "Prints the JSON Schema of weldment files, for editors that complete and check.")
final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(names = "--plan", description = "the schema of plan.json instead")
  private boolean plan;

  @Override
  public Integer call() {
    String text = plan ? PlanSchema.text() : WeldmentSchema.text();
    spec.commandLine().getOut().println(text.stripTrailing());
    return ExitCode.DONE;
  }
}
