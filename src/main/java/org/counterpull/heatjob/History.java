package org.counterpull.heatjob;

import org.counterpull.heat.solve.Probe;

/** The temperature at one place over time. */
public final class History {
  private final Probe probe;

  History(Probe probe) {
    this.probe = probe;
  }

  /** Times at which it was noted, s. */
  public double[] timesS() {
    return probe.timesS();
  }

  /** Temperature at a time, on the straight line between notes. */
  public double atC(double timeS) {
    return probe.atC(timeS);
  }

  public double peakC() {
    return probe.peakC();
  }

  public double peakTimeS() {
    return probe.peakTimeS();
  }

  /** At the end. */
  public double endC() {
    return probe.nowC();
  }

  /** Time spent above a temperature, s. */
  public double timeAboveS(double limitC) {
    return probe.timeAboveS(limitC);
  }
}
