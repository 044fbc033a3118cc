package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.counterpull.plan.Plan;
import org.counterpull.planning.Engines;
import org.counterpull.planning.Planner;
import org.counterpull.report.PlanReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Plans a weldment for the bench. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = "Plans a weldment: plan.html for the bench, plan.md, plan.json.",
    footer = {"%nExample:", "  counterpull plan examples/pit-cover.yaml --out pit-cover-plan"})
final class PlanCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private FileAndFolder given;

  @Option(names = "--seed", paramLabel = "N", description = "seed of searches; 1 if left out")
  private long seed = 1;

  @Option(
      names = "--procedures",
      paramLabel = "DIR",
      description = "a folder of your own procedure rows")
  private Path procedures;

  @Option(
      names = "--heat",
      paramLabel = "R",
      description =
          "how finely the heat model verifies the waits: quick, coarse, normal, fine; none for"
              + " waits by closed forms; quick if left out")
  private HeatCheck heat = HeatCheck.USUAL;

  @Option(
      names = "--mount",
      paramLabel = "WORD",
      description =
          "near: compare the ways of fastening where closed forms say that a weld comes near a bore,"
              + " seal, bearing, thread or coating; none: only name those welds; near if left out")
  private MountCheck mount = MountCheck.NEAR;

  @Option(names = "--json", description = "print the plan as JSON instead of the summary")
  private boolean json;

  @Override
  public Integer call() {
    SoundWeldment sound = SoundWeldment.read(given.file());
    SimulatedTime shown = new SimulatedTime(spec.commandLine().getErr(), Optional.empty());
    Plan plan =
        new Planner(ProceduresCommand.book(procedures))
            .plan(
                sound.weldment(),
                sound.contacts(),
                seed,
                new Engines(heat.resolution(), mount == MountCheck.NEAR),
                shown);
    shown.done();
    PlanReport report = new PlanReport(plan, sound.units());
    List<Path> files = given.write("plan", report.files());
    PrintWriter out = spec.commandLine().getOut();
    out.println(
        json
            ? report.json().stripTrailing()
            : report.summary(files.stream().map(Path::toString).toList()).stripTrailing());
    return plan.refusals().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
  }
}
