package org.counterpull.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * One run of the command line.
 *
 * @param code exit code
 * @param out what it answered
 * @param err what it complained
 */
public record CommandRun(int code, String out, String err) {
  /** Runs the program with these words. */
  public static CommandRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
    return new CommandRun(code, out.toString(), err.toString());
  }
}
