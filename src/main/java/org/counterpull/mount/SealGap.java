package org.counterpull.mount;

import java.util.Locale;
import org.counterpull.fit.ExtrusionGap;
import org.counterpull.fit.ThickTube;
import org.counterpull.fit.ToleranceClass;

/**
 * The clearance behind a piston's seal at pressure: guide f7 at its smallest in a bore at its
 * largest, the bore's growth by Lame, and what a weld has widened it by.
 *
 * @param gapMm on diameter
 * @param bridgedMm what a ring bridges at that pressure
 */
record SealGap(double gapMm, double bridgedMm) {
  private static final ToleranceClass GUIDE = new ToleranceClass('f', 7);

  /** For a toleranced bore with its movement, in the tube. */
  static SealGap of(BoreFigure bore, BoredTube tube) {
    double pressure = ShopValue.of("seal pressure");
    double in = tube.insideMm();
    BoreMovement moved = bore.movement();
    double widened = Math.max(0, moved.meanMm() + moved.outOfRoundMm() / 2);
    double gap =
        bore.bandMm().orElseThrow()
            - GUIDE.lowerMm(in)
            + ThickTube.growth(in, tube.outsideMm(), pressure).value()
            + widened;
    return new SealGap(gap, ExtrusionGap.of(pressure, ShopValue.of("seal hardness")).value());
  }

  boolean holds() {
    return gapMm <= bridgedMm;
  }

  String words(String bore) {
    return String.format(
        Locale.ROOT,
        "behind a seal in %s the gap is up to %.3f mm on diameter at %.0f MPa, a ring of %.0f Shore"
            + " bridges %.3f mm: %s",
        bore,
        gapMm,
        ShopValue.of("seal pressure"),
        ShopValue.of("seal hardness"),
        bridgedMm,
        holds() ? "it holds" : "it needs a back-up ring");
  }
}
