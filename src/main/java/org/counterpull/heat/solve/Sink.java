package org.counterpull.heat.solve;

import java.util.function.Predicate;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Patch;
import org.counterpull.heat.face.HeldBody;

/**
 * Something cold laid on part of a surface for a time: wet rag, copper block, jet of air. It takes
 * the place of what is otherwise on that surface.
 *
 * @param block on which it lies
 * @param where the patches that it covers
 * @param body its contact and temperature
 * @param fromS when it is put on
 * @param toS when it is taken off
 */
public record Sink(Block block, Predicate<Patch> where, HeldBody body, double fromS, double toS) {

  public Sink {
    if (!(toS > fromS)) {
      throw new IllegalArgumentException("heat sink from " + fromS + " s to " + toS + " s");
    }
  }

  boolean on(double timeS) {
    return timeS >= fromS && timeS < toS;
  }
}
