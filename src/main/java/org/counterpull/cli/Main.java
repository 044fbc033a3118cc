package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program's entry: one verb a job. */
@Command(
    name = "counterpull",
    mixinStandardHelpOptions = true,
    version = "counterpull 0.1.0",
    description = "Plans a welded fabrication so that the pulls of its welds cancel.",
    synopsisSubcommandLabel = "COMMAND",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done",
      "1:done, and the answer is that something can't or mustn't be done",
      "2:bad input or usage, nothing written",
      "3:a fault of the program"
    },
    subcommands = {
      PlanCommand.class,
      NewCommand.class,
      SchemaCommand.class,
      CheckCommand.class,
      HeatCommand.class,
      CouponCommand.class,
      CalibrateCommand.class,
      PullCommand.class,
      MountCommand.class,
      ProceduresCommand.class,
      MachineCommand.class,
      JointCommand.class,
      FormulaCommand.class,
      GenerateCompletion.class
    })
public final class Main implements Runnable {
  @Spec private CommandSpec spec;

  private Main() {}

  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    System.exit(run(out, err, args));
  }

  /**
   * Runs one command.
   *
   * @param out where answers go
   * @param err where complaints and progress go
   * @param args the words after the program's name
   * @return the exit code
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line =
        new CommandLine(new Main())
            .setOut(out)
            .setErr(err)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setUsageHelpAutoWidth(false)
            .setUsageHelpWidth(100)
            .setExecutionExceptionHandler(Main::internalFault);
    int code = line.execute(args);
    out.flush();
    err.flush();
    return code;
  }

  private static int internalFault(
      Exception fault, CommandLine line, CommandLine.ParseResult parsed) {
    if (fault instanceof BadInput bad) {
      line.getErr().println(bad.getMessage());
      return ExitCode.BAD_INPUT;
    }
    line.getErr().println("counterpull: a fault of the program, not of your file: " + fault);
    StackTraceElement[] trace = fault.getStackTrace();
    if (trace.length > 0) {
      line.getErr()
          .println(
              "Try: report it with the file that brought it up; it was met at " + trace[0] + ".");
    }
    return ExitCode.INTERNAL;
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
