package org.counterpull.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.counterpull.report.CouponReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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

  @Mixin private FileAndFolder given;

  @Option(names = "--json", description = "print it as JSON instead of the sheet")
  private boolean json;

  @Override
  public Integer call() {
    TestPiece piece = TestPiece.of(given.file());
    CouponReport report = new CouponReport(piece.weldment(), piece.coupon(), piece.pulls());
    List<Path> files = given.write("coupon", report.files());
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
