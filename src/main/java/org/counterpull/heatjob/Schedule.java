package org.counterpull.heatjob;

import java.util.List;
import java.util.Optional;

/**
 * When which arc burns.
 *
 * @param runs what is welded
 * @param arcs passes and tacks in the order in which they start
 * @param endS end of the job; empty for until all is hand-warm
 * @param notes what else must be known, in sentences
 */
record Schedule(List<WeldedRun> runs, List<Arc> arcs, Optional<Double> endS, List<String> notes) {

  Schedule {
    runs = List.copyOf(runs);
    arcs = arcs.stream().sorted(java.util.Comparator.comparingDouble(Arc::startS)).toList();
    notes = List.copyOf(notes);
  }

  /**
   * A pass, or one tack.
   *
   * @param run that it is of
   * @param number of the pass, from 1; 0 for a tack
   * @param pass heat and speed
   * @param stretches what it welds
   * @param startS when it is struck
   */
  record Arc(
      WeldedRun run,
      int number,
      WeldedRun.Pass pass,
      List<WeldedRun.Stretch> stretches,
      double startS) {

    boolean tack() {
      return number == 0;
    }

    double endS() {
      double length = stretches.stream().mapToDouble(WeldedRun.Stretch::lengthMm).sum();
      return startS + length / pass.travelMmPerS();
    }
  }

  double lastArcEndS() {
    return arcs.stream().mapToDouble(Arc::endS).max().orElse(0);
  }
}
