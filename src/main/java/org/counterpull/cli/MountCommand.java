package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.counterpull.mount.Inside;
import org.counterpull.mount.LugHole;
import org.counterpull.mount.MountAnswer;
import org.counterpull.mount.MountCases;
import org.counterpull.mount.MountWays;
import org.counterpull.mount.Outcome;
import org.counterpull.mount.Way;
import org.counterpull.report.MountReport;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Weldment;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Directly on the tube, or how else. */
@Command(
    name = "mount",
    mixinStandardHelpOptions = true,
    description = {
      "Weld it straight to the tube, or how else? Compares direct welding, smaller passes, stripping,",
      "heat sink, sleeve, saddle, clamp and pins by heat, bore and strength: mount.html, mount.json."
    },
    footer = {
      "%nExamples:",
      "  counterpull mount examples/cradle.yaml --feature \"gland seal\"",
      "  counterpull mount --tube \"60 x 5\" --tolerance H8 --lug \"40 x 10 x 60\" --weld \"leg 6\"",
      "      --from-seal \"45 mm\" --seal nbr --process mag --current 160 --force \"12 kN\""
    })
final class MountCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "the weldment file")
  private Path file;

  @Option(
      names = "--feature",
      paramLabel = "NAME",
      description = "only welds near this feature; all if left out")
  private String feature;

  @Option(
      names = "--inside",
      paramLabel = "WORD",
      description = "drained or oil: what is in the tube; drained if left out")
  private Inside inside = Inside.DRAINED;

  @Option(
      names = "--sleeve",
      paramLabel = "SIZE",
      description =
          "a sleeve that is at hand, wall x length x gap on radius: \"5 x 120 x 0.25\"; sized if left out")
  private String sleeve;

  @ArgGroup(exclusive = false, heading = "A lug on a tube in a few figures:%n")
  private MountOptions options = new MountOptions();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "folder for the files; made if it isn't there")
  private Path folder;

  @Option(names = "--json", description = "print mount.json instead of the summary")
  private boolean json;

  @Override
  public Integer call() {
    if (file == null && !options.given()) {
      throw new BadInput(
          "neither a file nor a tube is given\nTry: a weldment file, or --tube \"60 x 5\"");
    }
    if (file != null && options.given()) {
      throw new BadInput("a file and a tube in options were both given\nTry: one of the two");
    }
    MountReport report = file == null ? ofOptions() : ofFile();
    PrintWriter out = spec.commandLine().getOut();
    List<Path> files =
        folder == null && file == null
            ? List.of()
            : Outputs.write(folder, file, "mount", report.files());
    if (json) {
      out.println(report.json().stripTrailing());
    } else {
      out.println(report.summary().stripTrailing());
      files.forEach(f -> out.println("written: " + f));
    }
    return refused(report.answers()) ? ExitCode.REFUSED : ExitCode.DONE;
  }

  private MountReport ofOptions() {
    if (feature != null) {
      throw new BadInput("--feature goes with a file\nTry: without it");
    }
    MountAnswer answer =
        options.withPin(MountWays.of(options.mount(inside), MountOptions.sleeve(sleeve)));
    return new MountReport(List.of(answer), List.of());
  }

  private MountReport ofFile() {
    SoundWeldment sound = SoundWeldment.read(file);
    Weldment weldment = sound.weldment();
    List<String> names = weldment.features().stream().map(Feature::name).toList();
    if (feature != null && !names.contains(feature)) {
      throw new BadInput(
          "--feature: "
              + file
              + " has no feature \""
              + feature
              + "\"\nTry: "
              + (names.isEmpty() ? "a file with features" : String.join(", ", names)));
    }
    MountCases cases =
        MountCases.of(
            weldment,
            sound.contacts(),
            ProceduresCommand.book(null),
            Optional.ofNullable(feature),
            inside);
    if (cases.cases().isEmpty()) {
      String why = cases.leftOut().isEmpty() ? "" : "\n" + String.join("\n", cases.leftOut());
      throw new BadInput(
          file
              + ": no weld lies on a round tube near a bore, seal, bearing, thread or coating"
              + why
              + "\nTry: features: with kind and on: the tube");
    }
    List<MountAnswer> answers =
        cases.cases().stream()
            .map(mount -> MountWays.of(mount, MountOptions.sleeve(sleeve)))
            .toList();
    return new MountReport(answers, cases.leftOut());
  }

  private static boolean refused(List<MountAnswer> answers) {
    return answers.stream()
        .anyMatch(
            a ->
                a.of(Way.AS_DRAWN).outcome() == Outcome.DONT
                    || a.hole().filter(LugHole::tooWeak).isPresent());
  }
}
