package org.counterpull.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.heat.solve.Progress;

/** Shows how far a simulation is, on one line of the terminal; says nothing anywhere else. */
final class SimulatedTime implements Progress {
  private static final int STEPS_A_LINE = 40;

  private final PrintWriter err;
  private final boolean shown;
  private final Optional<Double> endS;
  private int steps;

  SimulatedTime(PrintWriter err, Optional<Double> endS) {
    this.err = err;
    this.shown = System.console() != null;
    this.endS = endS;
  }

  @Override
  public boolean goOn(double timeS) {
    if (shown && ++steps % STEPS_A_LINE == 0) {
      String end = endS.map(s -> String.format(Locale.ROOT, " of %.0f s", s)).orElse(" s");
      err.printf(Locale.ROOT, "\rsimulated: %.0f%s ", timeS, end);
      err.flush();
    }
    return true;
  }

  /** Wipes the line. */
  void done() {
    if (shown && steps >= STEPS_A_LINE) {
      err.print("\r" + " ".repeat(60) + "\r");
      err.flush();
    }
  }
}
