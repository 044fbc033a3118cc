package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.report.CouponReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Designs the test piece that tells most about a job. */
@Command(
    name = "coupon",
    mixinStandardHelpOptions = true,
    description = {
      "Designs a small test piece with the process, thickness and size that matter most to a job:",
      "what to cut, how to weld it, where and when to measure: coupon.md, coupon.svg."
    },
    footer = {"%nExample:", "  counterpull coupon examples/pit-cover.yaml"})
final class CouponCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "the weldment file, YAML or JSON")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "folder for the files; made if it isn't there; if left out, named after FILE")
  private Path folder;

  @Option(names = "--json", description = "print it as JSON instead of the sheet")
  private boolean json;

  @Override
  public Integer call() {
    TestPiece piece = TestPiece.of(file);
    CouponReport report = new CouponReport(piece.weldment(), piece.coupon(), piece.pulls());
    List<Path> files = Outputs.write(folder, file, "coupon", report.files());
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(JsonText.write(report.json()));
    } else {
      out.println(report.sheet().stripTrailing());
      files.forEach(f -> out.println("written: " + f));
    }
    return ExitCode.DONE;
  }
}
