package org.counterpull.order;

import java.util.ArrayList;
import java.util.List;

/** What has been done so far, and the clock. */
final class WorkLog {
  private final List<Timed> done = new ArrayList<>();
  private final List<Precedence> added = new ArrayList<>();
  private double nowS;

  double nowS() {
    return nowS;
  }

  /** Lets time pass with nothing to note. */
  void pass(double seconds) {
    nowS += seconds;
  }

  /** Does an operation from now on. */
  void take(Operation operation, double seconds) {
    put(operation, nowS, nowS + seconds);
    nowS += seconds;
  }

  /** Notes an operation with its own times; the clock stays. */
  void put(Operation operation, double startS, double endS) {
    done.add(new Timed(done.size() + 1, operation, startS, endS));
  }

  /** Does an operation that a step needs before it, and notes why. */
  void takeBefore(String stepId, Operation operation, double seconds, String rule, String reason) {
    take(operation, seconds);
    added.add(new Precedence(operation.id(), stepId, rule, reason, true));
  }

  List<Timed> done() {
    return List.copyOf(done);
  }

  List<Precedence> added() {
    return List.copyOf(added);
  }
}
