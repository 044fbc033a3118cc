package org.counterpull.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program's entry: one verb a job. */
@Command(
    name = "counterpull",
    mixinStandardHelpOptions = true,
    version = "counterpull 0.1.0",
    description = "Plans a welded fabrication so that the pulls of its welds cancel.")
public final class Main implements Runnable {

  private Main() {}

  public static void main(String[] args) {
    System.exit(new CommandLine(new Main()).execute(args));
  }

  @Override
  public void run() {
    CommandLine.usage(this, System.out);
  }
}
