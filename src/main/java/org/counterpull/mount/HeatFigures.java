package org.counterpull.mount;

import java.util.List;
import java.util.Optional;

/**
 * What the heat of a way of welding does.
 *
 * @param borePeakC highest temperature at the bore under the welds
 * @param borePeakZMm where along the tube that is
 * @param near how warm each sensitive thing got
 * @param passes laid
 * @param weldedS from the first arc to the last, waits included
 * @param arcS arc time
 * @param endS simulated time
 * @param cells of metal
 * @param cellsThroughWall of the tube
 * @param imbalance of the energy balance
 */
public record HeatFigures(
    double borePeakC,
    double borePeakZMm,
    List<Warmth> near,
    int passes,
    double weldedS,
    double arcS,
    double endS,
    int cells,
    int cellsThroughWall,
    double imbalance) {
  public HeatFigures {
    near = List.copyOf(near);
  }

  /** How warm that got. */
  public Optional<Warmth> of(String what) {
    return near.stream().filter(w -> w.what().equals(what)).findFirst();
  }
}
