package org.counterpull.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.drawing.WeldSymbol.Standard;
import org.counterpull.plan.Plan;
import org.counterpull.planning.Planner;
import org.counterpull.report.JointSheets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a preliminary welding procedure specification for each joint. */
@Command(
    name = "sheets",
    mixinStandardHelpOptions = true,
    description = {
      "Writes joint-sheets.html: for each joint a preliminary, unqualified welding procedure",
      "specification with its section, weld symbol, passes and the fields of ISO 15609-1."
    },
    footer = {"%nExample:", "  counterpull joint sheets examples/cradle.yaml --symbols aws"})
final class JointSheetsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private FileAndFolder given;

  @Option(
      names = "--symbols",
      paramLabel = "S",
      description = "iso (ISO 2553, system A) or aws (AWS A2.4); iso if left out")
  private Standard symbols = Standard.ISO;

  @Option(
      names = "--procedures",
      paramLabel = "DIR",
      description = "a folder of your own procedure rows")
  private Path procedures;

  @Override
  public Integer call() {
    SoundWeldment sound = SoundWeldment.read(given.file());
    Plan plan =
        new Planner(ProceduresCommand.book(procedures)).plan(sound.weldment(), sound.contacts(), 1);
    JointSheets sheets = new JointSheets(plan, sound.units(), symbols);
    List<Path> files = given.write("joints", sheets.files());
    files.forEach(path -> spec.commandLine().getOut().println(path));
    boolean allWelded = plan.joints().stream().noneMatch(j -> j.runs().isEmpty());
    return allWelded && plan.refusals().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
  }
}
