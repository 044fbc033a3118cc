package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.counterpull.heatjob.HeatAnswer;
import org.counterpull.heatjob.HeatJob;
import org.counterpull.heatjob.Resolution;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.plan.Plan;
import org.counterpull.planning.Engines;
import org.counterpull.planning.Planner;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.report.HeatReport;
import org.counterpull.weldment.Weldment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Works out the temperatures of a whole job. */
@Command(
    name = "heat",
    mixinStandardHelpOptions = true,
    description = {
      "Works out how warm a weldment gets, where and when:",
      "temps.csv, heat.json, heat.svg."
    },
    footer = {"%nExample:", "  counterpull heat examples/cradle.yaml --resolution coarse"})
final class HeatCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private FileAndFolder given;

  @Option(
      names = "--resolution",
      paramLabel = "R",
      description = "coarse, normal or fine; normal if left out")
  private Resolution resolution = Resolution.NORMAL;

  /** Whose order. */
  enum Order {
    PLAN,
    WRITTEN
  }

  @Option(
      names = "--order",
      paramLabel = "O",
      description =
          "plan or written; if left out, as written where the file has an order or its runs have"
              + " lines of their own, else by plan")
  private Order order;

  @Option(
      names = "--until",
      paramLabel = "TIME",
      description =
          "how long; if left out, the whole plan, or until all is hand-warm for a written order")
  private String until;

  @Option(names = "--seed", paramLabel = "N", description = "seed of searches; 1 if left out")
  private long seed = 1;

  @Option(names = "--json", description = "print heat.json instead of the summary")
  private boolean json;

  @Override
  public Integer call() {
    Optional<Double> untilS = Optional.ofNullable(until).map(HeatCommand::seconds);
    SoundWeldment sound = SoundWeldment.read(given.file());
    HeatJob job = written(sound.weldment()) ? writtenJob(sound) : plannedJob(sound);
    if (!job.anyArc()) {
      throw new BadInput(
          given.file()
              + ": no arc burns: no run has heat\n"
              + "Try: a machine that can weld it, or under runs:"
              + " NAME: {heat: {net: 600, travel: 5 mm/s}}");
    }
    if (!job.besideTheMetal().isEmpty()) {
      throw new BadInput(
          given.file()
              + ": "
              + job.besideTheMetal().get(0)
              + " runs beside the metal: its arc would warm nothing"
              + "\nTry: from and to on a wall of the part");
    }
    SimulatedTime shown = new SimulatedTime(spec.commandLine().getErr(), untilS.or(job::endS));
    HeatAnswer answer = job.answer(untilS, shown);
    shown.done();
    HeatReport report = new HeatReport(answer);
    List<Path> files = given.write("heat", report.files());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(report.json().stripTrailing());
    } else {
      out.println(report.summary().stripTrailing());
      files.forEach(f -> out.println("written: " + f));
    }
    return ExitCode.DONE;
  }

  private static double seconds(String text) {
    try {
      double seconds = QuantityParser.parseTimeS(text);
      if (seconds > 0) {
        return seconds;
      }
    } catch (QuantityException e) {
      throw new BadInput("--until: " + e.getMessage() + "\nTry: 600 s");
    }
    throw new BadInput("--until: " + text + " is not above 0\nTry: 600 s");
  }

  private boolean written(Weldment weldment) {
    boolean ownLines = weldment.runs().stream().anyMatch(run -> run.on().isPresent());
    boolean some = weldment.order().isPresent() || ownLines || weldment.joints().isEmpty();
    if (order == Order.WRITTEN && !some) {
      throw new BadInput(
          given.file() + ": the file has no order\nTry: order: [a run, ...], or --order plan");
    }
    return order == null ? some : order == Order.WRITTEN;
  }

  private HeatJob writtenJob(SoundWeldment sound) {
    JointPlanner planner = new JointPlanner(sound.weldment(), book());
    List<JointPlan> joints =
        sound.contacts().stream()
            .map(c -> planner.plan(sound.weldment().joint(c.joint()), c))
            .toList();
    return HeatJob.written(sound.weldment(), sound.contacts(), joints, resolution);
  }

  private HeatJob plannedJob(SoundWeldment sound) {
    if (sound.weldment().joints().isEmpty()) {
      throw new BadInput(given.file() + ": there are no joints to plan\nTry: --order written");
    }
    SimulatedTime shown = new SimulatedTime(spec.commandLine().getErr(), Optional.empty());
    Plan plan =
        new Planner(book())
            .plan(
                sound.weldment(),
                sound.contacts(),
                seed,
                Engines.waits(HeatCheck.USUAL.resolution()),
                shown);
    shown.done();
    return HeatJob.planned(plan, sound.contacts(), resolution);
  }

  private static ProcedureBook book() {
    return ProceduresCommand.book(null);
  }
}
