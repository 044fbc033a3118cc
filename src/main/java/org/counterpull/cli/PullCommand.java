package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PullAnswer;
import org.counterpull.pulljob.PullJob;
import org.counterpull.report.PullReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says how far each check will be off, and finds the order that keeps it true. */
@Command(
    name = "pull",
    mixinStandardHelpOptions = true,
    description = {
      "Says how far each check of a weldment will be off, for the best order and for others:",
      "pull.json, shape.svg."
    },
    footer = {"%nExample:", "  counterpull pull examples/hinge-bar.yaml --order rules"})
final class PullCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private FileAndFolder given;

  @Option(
      names = "--order",
      paramLabel = "O",
      description =
          "best, rules, written, one-side-first or left-to-right; best if left out, and as written"
              + " where the file has an order")
  private String order;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "how many orders the search looks at, at most; 300 if left out")
  private long effort = 300;

  @Option(names = "--seed", paramLabel = "N", description = "seed of the search; 1 if left out")
  private long seed = 1;

  @Option(names = "--json", description = "print pull.json instead of the summary")
  private boolean json;

  @Override
  public Integer call() {
    if (effort < 1) {
      throw new BadInput("--effort: " + effort + " is not above 0\nTry: 300");
    }
    SoundWeldment sound = SoundWeldment.read(given.file());
    PullJob job =
        PullJob.of(sound.weldment(), sound.contacts(), joints(sound), seed)
            .orElseThrow(
                () ->
                    new BadInput(
                        given.file()
                            + ": nothing pulls: no run has heat\n"
                            + "Try: a machine that can weld it, or under runs:"
                            + " NAME: {shrinkage: {across: 0.2, angle: 1 deg, along: 100 kN}}"));
    NamedOrder wanted = order(job);
    try (Interruption interruption = new Interruption()) {
      PullAnswer answer = job.answer(wanted, effort, interruption::asked);
      PullReport report = new PullReport(answer, sound.units());
      List<Path> files = given.write("pull", report.files());
      PrintWriter out = spec.commandLine().getOut();
      if (json) {
        out.println(report.json().stripTrailing());
      } else {
        out.println(report.summary().stripTrailing());
        files.forEach(f -> out.println("written: " + f));
      }
      out.flush();

      return report.outOfTolerance() ? ExitCode.REFUSED : ExitCode.DONE;
    }
  }

  private static List<JointPlan> joints(SoundWeldment sound) {
    JointPlanner planner = new JointPlanner(sound.weldment(), ProceduresCommand.book(null));
    return sound.contacts().stream()
        .map(c -> planner.plan(sound.weldment().joint(c.joint()), c))
        .toList();
  }

  private NamedOrder order(PullJob job) {
    if (order == null) {
      return job.anyWritten() ? NamedOrder.WRITTEN : NamedOrder.BEST;
    }
    for (NamedOrder named : NamedOrder.values()) {
      if (named.word().equalsIgnoreCase(order)) {
        if (named == NamedOrder.WRITTEN && !job.anyWritten()) {
          throw new BadInput(
              given.file() + ": the file has no order\nTry: order: [a run, ...], or --order best");
        }
        return named;
      }
    }
    throw new BadInput(
        "--order: "
            + order
            + " is no order\nTry: best, rules, written, one-side-first or left-to-right");
  }
}
