package org.counterpull.heat.solve;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.source.MovingSource;

/** What happens when: arcs struck and put out, heat sinks laid on and taken off. */
final class Schedule {
  private final List<Sink> sinks;
  private final List<MovingSource> sources = new ArrayList<>();

  Schedule(List<Sink> sinks) {
    this.sinks = sinks;
  }

  void add(MovingSource source) {
    sources.add(source);
  }

  /** Energy of all arcs up to a time. */
  double energyJ(double timeS) {
    return sources.stream().mapToDouble(s -> s.energyJ(0, timeS)).sum();
  }

  /** The arcs that burn just after a time. */
  List<MovingSource> burning(double timeS) {
    return sources.stream().filter(s -> s.burns(timeS, timeS + Stepping.ROUNDING_S)).toList();
  }

  /** The next moment at which something is switched. */
  double nextEventS(double timeS) {
    double next = Double.POSITIVE_INFINITY;
    for (MovingSource source : sources) {
      next = earlier(next, source.startS(), timeS);
      next = earlier(next, source.endS(), timeS);
    }
    for (Sink sink : sinks) {
      next = earlier(next, sink.fromS(), timeS);
      next = earlier(next, sink.toS(), timeS);
    }
    return next;
  }

  private static double earlier(double next, double eventS, double timeS) {
    return eventS > timeS + Stepping.ROUNDING_S ? Math.min(next, eventS) : next;
  }

  /** Shortest time in which an arc passes its own length, or its heat spreads over it. */
  static double resolvedS(List<MovingSource> burning, List<BlockField> fields) {
    double diffusivity = 0;
    for (BlockField field : fields) {
      diffusivity = Math.max(diffusivity, field.material().greatestDiffusivityMm2PerS());
    }
    double shortest = Double.POSITIVE_INFINITY;
    for (MovingSource source : burning) {
      double length = source.shape().lengthMm();
      double speed = source.travelSpeedMmPerS();
      shortest = Math.min(shortest, length * length / (4 * diffusivity));
      shortest = speed > 0 ? Math.min(shortest, length / speed) : shortest;
    }
    return shortest;
  }
}
