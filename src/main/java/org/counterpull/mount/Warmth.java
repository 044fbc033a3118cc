package org.counterpull.mount;

import java.util.Optional;

/**
 * How warm something got.
 *
 * @param what the name of it
 * @param atZMm where along the tube
 * @param peakC its highest temperature
 * @param limit how warm it may get; empty where heat does not spoil it
 * @param overS time above the long limit
 */
public record Warmth(
    String what, double atZMm, double peakC, Optional<HeatLimit> limit, double overS) {

  /** Whether it is spoilt. */
  public boolean spoilt() {
    return limit.filter(l -> !l.holds(peakC, overS)).isPresent();
  }
}
