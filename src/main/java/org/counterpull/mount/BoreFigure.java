package org.counterpull.mount;

import java.util.Optional;

/**
 * What a way does to a bore of which the size matters.
 *
 * @param what name of the bore
 * @param movement what it is moved by
 * @param bandMm width of its tolerance, or its clearance where it has no tolerance; empty for
 *     neither
 * @param toleranced whether the band is that of an ISO 286 class
 * @param accept what that means; empty where there is no band
 * @param clearanceMm between bore and what slides or turns in it, on diameter; empty where not
 *     known
 * @param through whether that still goes through
 */
public record BoreFigure(
    String what,
    BoreMovement movement,
    Optional<Double> bandMm,
    boolean toleranced,
    Optional<Accept> accept,
    Optional<Double> clearanceMm,
    Through through) {

  /** Whether a rod, piston or pin still goes through. */
  public enum Through {
    YES("yes"),
    MARGINAL("marginal"),
    NO("no"),
    UNKNOWN("not known");

    private final String words;

    Through(String words) {
      this.words = words;
    }

    /** The words used in outputs. */
    public String words() {
      return words;
    }
  }

  /** A moved bore against its band and clearance. */
  static BoreFigure of(Sensitive bore, BoredTube tube, BoreMovement movement) {
    Optional<Double> band =
        bore.tolerance().map(t -> t.widthMm(tube.insideMm())).or(bore::clearanceMm);
    Optional<Double> clearance = bore.clearanceMm().or(() -> sliding(bore, tube));
    return new BoreFigure(
        bore.name(),
        movement,
        band,
        bore.tolerance().isPresent(),
        band.map(b -> Accept.of(movement.changeMm(), b)),
        clearance,
        clearance.map(c -> through(movement.inwardMm(), c)).orElse(Through.UNKNOWN));
  }

  /** What to do with it: a bore with a seal is honed, one that something turns in is reamed. */
  public String words() {
    return accept.map(a -> toleranced ? a.words() : a.ofClearance()).orElse("no band is given");
  }

  /** Least clearance of a piston guide turned to f7 in a toleranced bore. */
  private static Optional<Double> sliding(Sensitive bore, BoredTube tube) {
    return bore.tolerance()
        .map(t -> -new org.counterpull.fit.ToleranceClass('f', 7).upperMm(tube.insideMm()));
  }

  private static Through through(Span inwardMm, double clearanceMm) {
    if (inwardMm.high() < clearanceMm) {
      return Through.YES;
    }
    return inwardMm.value() < clearanceMm ? Through.MARGINAL : Through.NO;
  }
}
