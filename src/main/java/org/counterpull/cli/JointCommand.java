package org.counterpull.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What can be had for single joints. */
@Command(
    name = "joint",
    mixinStandardHelpOptions = true,
    description = "Sheets for the joints of a weldment.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {JointSheetsCommand.class, CommandLine.HelpCommand.class})
final class JointCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "joint: which of them? Try: joint sheets FILE");
  }
}
