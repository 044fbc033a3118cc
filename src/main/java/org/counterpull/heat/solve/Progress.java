package org.counterpull.heat.solve;

/** Told after each step how far a simulation has come, and asked whether to go on. */
@FunctionalInterface
public interface Progress {
  /**
   * One step is done.
   *
   * @param timeS simulated time
   * @return false to stop; the simulation then throws {@link StoppedException}
   */
  boolean goOn(double timeS);

  /** Nobody watches. */
  Progress NONE = timeS -> true;

  /** Thrown when a simulation was told to stop; its state is that of the last whole step. */
  final class StoppedException extends RuntimeException {
    StoppedException(double timeS) {
      super("stopped at " + timeS + " s of simulated time");
    }
  }
}
