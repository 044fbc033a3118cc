package org.counterpull.hinge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.fit.PinClearance;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.order.Timed;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.PinRow.Finish;
import org.counterpull.plan.PinRow.Turns;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.quantity.Computed;
import org.counterpull.swing.SwingResult;
import org.counterpull.weldment.Weldment;

/** Every row of bores that a pin turns in, as it comes out. */
public final class PinRows {
  /** What a reamer needs beside what the bores are off, mm: common practice, no source. */
  private static final double CLEANS_UP_MM = 0.1;

  private final Weldment weldment;
  private final List<JointPlan> joints;
  private final Optional<PullAnswer> shape;
  private final Optional<PlanHeat> heat;

  private PinRows(
      Weldment weldment,
      List<JointPlan> joints,
      Optional<PullAnswer> shape,
      Optional<PlanHeat> heat) {
    this.weldment = weldment;
    this.joints = joints;
    this.shape = shape;
    this.heat = heat;
  }

  /**
   * The rows.
   *
   * @param weldment what is built
   * @param joints their plans
   * @param steps the whole job in order
   * @param swings what turns
   * @param shape how it comes out, where that was worked out
   * @param heat how warm it gets, where that was worked out
   */
  public static List<PinRow> of(
      Weldment weldment,
      List<JointPlan> joints,
      List<Timed> steps,
      List<SwingResult> swings,
      Optional<PullAnswer> shape,
      Optional<PlanHeat> heat) {
    PinRows rows = new PinRows(weldment, joints, shape, heat);
    List<PinRow> all = new ArrayList<>();
    for (Row row : Row.of(weldment)) {
      all.add(rows.row(row, new BenchRow(weldment, joints, steps, row).of(swings)));
    }
    return all;
  }

  private PinRow row(Row row, PinRow.Bench bench) {
    Optional<RowLine> line = shape.map(answer -> new RowLine(row, answer));
    List<PinRow.Bore> bores = row.holes().stream().map(hole -> bore(row, hole, line)).toList();
    double closing = bores.stream().mapToDouble(PinRow.Bore::closingMm).max().orElse(0);
    Optional<Band> zone = line.map(RowLine::zone);
    PinRow.Fit fit =
        new PinRow.Fit(
            row.boreMm(),
            row.pinMm(),
            zone,
            closing,
            zone.map(band -> left(row, closing, band.expected())),
            zone.map(band -> left(row, closing, band.high())));
    return new PinRow(
        row.name(weldment),
        row.hinge(),
        fit,
        bores,
        turns(fit),
        finish(fit),
        line.map(RowLine::shares).orElse(List.of()),
        new WarmRow(weldment, row).of(fit.left(), heat),
        bench,
        new LoadedPin(weldment, joints, row).of());
  }

  private static Computed left(Row row, double closingMm, double radiusMm) {
    return PinClearance.of(row.boreMm(), Math.PI * closingMm, row.pinMm(), Math.max(0, radiusMm));
  }

  private PinRow.Bore bore(Row row, Hole hole, Optional<RowLine> line) {
    return new PinRow.Bore(
        hole.feature().name(),
        hole.part().name(),
        hole.piece(),
        line.map(l -> l.end(hole, true)),
        line.map(l -> l.end(hole, false)),
        row.alongMm(hole.end(row.along(), true)),
        row.alongMm(hole.end(row.along(), false)),
        hole.barrel() ? shortenedMm(hole) / Math.PI : 0,
        line.map(l -> l.movedMm(hole)).orElse(0.0));
  }

  /** What the welds along a barrel take off its circumference. */
  private double shortenedMm(Hole hole) {
    List<String> runs =
        joints.stream()
            .filter(
                j ->
                    j.joint().first().equals(hole.part().name())
                        || j.joint().second().equals(hole.part().name()))
            .flatMap(j -> j.runs().stream())
            .map(run -> run.name())
            .toList();
    return shape.stream()
        .flatMap(answer -> answer.runs().stream())
        .filter(wanted -> runs.contains(wanted.run()))
        .mapToDouble(PullAnswer.Wanted::acrossMm)
        .sum();
  }

  /** Yes where it still goes at the far end of the band, marginal where it goes as expected. */
  static Turns turns(PinRow.Fit fit) {
    if (fit.left().isEmpty() || fit.leftAtWorst().isEmpty()) {
      return Turns.UNTOLD;
    }
    if (fit.leftAtWorst().get().value() >= 0) {
      return Turns.YES;
    }
    return fit.left().get().value() >= 0 ? Turns.MARGINAL : Turns.NO;
  }

  /**
   * What is done to the bores: nothing where the pin turns; each is reamed where only their closing
   * is in the way; else all are left small and reamed in line, so that the reamer cuts all round.
   */
  static Finish finish(PinRow.Fit fit) {
    if (fit.zone().isEmpty()) {
      return new Finish(Finish.Way.UNTOLD, 0, fit.boreMm());
    }
    double off = 2 * fit.zone().get().high();
    if (off + fit.closing() <= fit.clearanceMm()) {
      return new Finish(Finish.Way.AS_WELDED, 0, fit.boreMm());
    }
    if (off <= fit.clearanceMm()) {
      return new Finish(Finish.Way.REAM_EACH, fit.closing(), fit.boreMm());
    }
    double stock = off + CLEANS_UP_MM;
    double before = Math.floor(10 * (fit.boreMm() - stock)) / 10;
    return new Finish(Finish.Way.REAM_IN_LINE, fit.boreMm() - before, before);
  }
}
