package org.counterpull.plan;

import java.util.List;
import java.util.Optional;
import org.counterpull.fit.AxisZone;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.quantity.Computed;

/**
 * Bores on one axis that one pin turns in, as they come out.
 *
 * @param name features on the axis, file order
 * @param hinge true for barrels, false for holes in lugs
 * @param fit bore, pin, and what the welding does to both ends of the story
 * @param bores along the axis
 * @param turns whether the pin turns by hand as welded
 * @param finish what is done to the bores when cold
 * @param shares what each run moves the line by, the most first; empty without a coaxial check on
 *     these bores
 * @param warm what changes while it is warm
 * @param bench rod, spacers, tacks, where to stop
 * @param load what the pin carries; empty where the file says of none
 */
public record PinRow(
    String name,
    boolean hinge,
    Fit fit,
    List<Bore> bores,
    Turns turns,
    Finish finish,
    List<Share> shares,
    Warm warm,
    Bench bench,
    Optional<PinLoad> load) {
  public PinRow {
    bores = List.copyOf(bores);
    shares = List.copyOf(shares);
  }

  /** Whether a pin turns by hand. */
  public enum Turns {
    YES("yes"),
    MARGINAL("marginal"),
    NO("no"),
    UNTOLD("can't be told");

    private final String words;

    Turns(String words) {
      this.words = words;
    }

    /** As on a plan. */
    public String words() {
      return words;
    }
  }

  /**
   * Bore, pin and line.
   *
   * @param boreMm diameter
   * @param pinMm diameter of the pin
   * @param zone radius of the thinnest cylinder that holds the axis; empty when the shape is not
   *     worked out
   * @param closing what the tightest bore closes by, on diameter
   * @param left clearance left, on diameter, as expected
   * @param leftAtWorst the same at the far end of the band
   */
  public record Fit(
      double boreMm,
      double pinMm,
      Optional<Band> zone,
      double closing,
      Optional<Computed> left,
      Optional<Computed> leftAtWorst) {

    /** Clearance before welding, on diameter. */
    public double clearanceMm() {
      return boreMm - pinMm;
    }
  }

  /**
   * One bore.
   *
   * @param feature that it belongs to
   * @param part that it is in
   * @param piece number of the welded piece, from 0: pieces are hung on the pin, each has a line of
   *     its own
   * @param left its end nearer to the row's beginning, off the piece's line; empty when the shape
   *     is not worked out
   * @param right its other end
   * @param fromMm where it begins along the row
   * @param toMm where it ends
   * @param closingMm what its own welds close it by, on diameter
   * @param movedMm how far its middle goes from where it was drawn, square to the axis, with the
   *     piece as it lies best
   */
  public record Bore(
      String feature,
      String part,
      int piece,
      Optional<AxisZone.Off> left,
      Optional<AxisZone.Off> right,
      double fromMm,
      double toMm,
      double closingMm,
      double movedMm) {

    /** How much its two ends are apart, square to the axis: out of parallel over its length. */
    public double tiltMm() {
      if (left.isEmpty() || right.isEmpty()) {
        return 0;
      }
      return Math.hypot(
          right.get().oneMm() - left.get().oneMm(), right.get().otherMm() - left.get().otherMm());
    }
  }

  /**
   * What is done to the bores.
   *
   * @param way how
   * @param stockMm what must be left in them for it, on diameter
   * @param beforeMm largest bore before welding
   */
  public record Finish(Way way, double stockMm, double beforeMm) {
    /** How bores are finished. */
    public enum Way {
      AS_WELDED,
      REAM_EACH,
      REAM_IN_LINE,
      UNTOLD;

      /** The words used in JSON. */
      public String words() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
      }
    }
  }

  /**
   * The row while it is warm.
   *
   * @param carrier the part along which the row is; empty where none is as long
   * @param bindsAtK difference over the carrier's depth at which the pin binds
   * @param sidePlayMm least play between neighbours along the axis; empty for bores that stand
   *     apart
   * @param playGoneAtK difference between two pieces at which their growth takes the play up
   * @param hottestC the hottest that a bore gets; empty without the heat model
   * @param atLastArcC the hottest bore when the last arc goes out
   */
  public record Warm(
      Optional<String> carrier,
      Optional<Computed> bindsAtK,
      Optional<Double> sidePlayMm,
      Optional<Double> playGoneAtK,
      Optional<Double> hottestC,
      Optional<Double> atLastArcC) {}

  /**
   * How it is held and tried.
   *
   * @param rod name of the rod in the file; empty without one
   * @param rodMm its diameter, or the one to use
   * @param spacer true when the file sets the gap between the parts with a spacer
   * @param tackOrder parts in the order of tacking
   * @param turnAfter numbers of the steps after which the pin or rod is turned
   * @param triedAt number of the step that tries the pin cold; 0 for none
   * @param grease fittings of these bores
   */
  public record Bench(
      Optional<String> rod,
      double rodMm,
      boolean spacer,
      List<String> tackOrder,
      List<Integer> turnAfter,
      int triedAt,
      List<Grease> grease) {
    public Bench {
      tackOrder = List.copyOf(tackOrder);
      turnAfter = List.copyOf(turnAfter);
      grease = List.copyOf(grease);
    }
  }

  /**
   * A grease fitting.
   *
   * @param feature its name
   * @param drilledAt number of the step that drills it; 0 for none
   * @param fromSeamDeg angle about the axis to the nearest seam; empty where no seam is near
   * @param reached in every looked-at position of its swing; empty where nothing swings
   */
  public record Grease(
      String feature, int drilledAt, Optional<Double> fromSeamDeg, Optional<Boolean> reached) {}
}
