package org.counterpull.mount;

import java.util.List;
import org.counterpull.shrinkage.ErrorBand;
import org.counterpull.shrinkage.FreeAngle;
import org.counterpull.shrinkage.FreeShrinkage;
import org.counterpull.shrinkage.GirthShrinkage;
import org.counterpull.shrinkage.HeatShare;
import org.counterpull.shrinkage.RingLoad;
import org.counterpull.shrinkage.ShrinkageMaterial;
import org.counterpull.shrinkage.TendonForce;

/**
 * How the welds on a tube move its bore. Welds along and across pull a shell: shrinkage across,
 * angle of the wall and force along each, pass by pass, with the share of the heat that goes into
 * the tube. Welds round the tube draw it in as a ring, four times as far at its end.
 */
final class WeldPull {
  private static final ErrorBand ACROSS = ErrorBand.of("fillet transverse shrinkage");
  private static final ErrorBand ANGLE = ErrorBand.of("angle of a fillet or bead");
  private static final ErrorBand FORCE = ErrorBand.of("tendon force");
  private static final ErrorBand GIRTH = ErrorBand.of("girth radial shrinkage");

  private final BoredTube tube;
  private final double share;

  /**
   * The pull on a tube.
   *
   * @param tube that is welded to
   * @param partner what is welded on
   */
  WeldPull(BoredTube tube, Partner partner) {
    this.tube = tube;
    int[] n = partner.halfPlates();
    this.share = HeatShare.share(n[0], tube.wallMm(), n[1], partner.thicknessMm());
  }

  /** The bore after welds that don't go round, on the shell of that tube. */
  BoreShape shape(TubeShell shell, List<Seam> seams) {
    double[][][] parts = new double[3][][];
    for (Seam seam : seams) {
      double across = 0;
      double angle = 0;
      double force = 0;
      double laidMm2 = 0;
      for (WeldPass pass : seam.passes()) {
        double heat = share * pass.netJPerMm();
        // A later pass turns the wall with the metal that already lies on it: a throat of sqrt(A).
        double turning = tube.wallMm() + Math.sqrt(laidMm2);
        across += FreeShrinkage.of(heat, tube.wallMm()).value();
        angle += FreeAngle.of(heat, turning).value();
        force += TendonForce.forceN(heat, ShrinkageMaterial.CARBON_STEEL);
        laidMm2 += pass.beadMm2();
      }
      parts[0] = sum(parts[0], shell.moved(seam, across, 0, 0));
      parts[1] = sum(parts[1], shell.moved(seam, 0, angle, 0));
      parts[2] = sum(parts[2], shell.moved(seam, 0, 0, force));
    }
    double[] low = {ACROSS.lowFactor(), ANGLE.lowFactor(), FORCE.lowFactor()};
    double[] high = {ACROSS.highFactor(), ANGLE.highFactor(), FORCE.highFactor()};
    return new BoreShape(shell.sections(), shell.places(), parts, low, high);
  }

  private static double[][] sum(double[][] first, double[][] second) {
    if (first == null) {
      return second;
    }
    for (int j = 0; j < first.length; j++) {
      for (int i = 0; i < first[j].length; i++) {
        first[j][i] += second[j][i];
      }
    }
    return first;
  }

  /** The bore between two places under a weld round the tube. */
  BoreMovement ring(Seam seam, double fromMm, double toMm) {
    double heat = share * seam.netJPerMm();
    double under = GirthShrinkage.of(heat, tube.meanRadiusMm(), tube.wallMm()).value();
    BoreMovement worst = BoreMovement.NONE;
    int looks = 60;
    for (int k = 0; k <= looks; k++) {
      double z = fromMm + (toMm - fromMm) * k / looks;
      double inward = 2 * under * shapeAt(seam.fromZMm(), z);
      double size = Math.abs(inward);
      if (size > worst.changeMm().value()) {
        Span change = new Span(GIRTH.lowFactor() * size, size, GIRTH.highFactor() * size);
        worst = new BoreMovement(z, change, inward > 0 ? change : Span.ZERO, -inward, 0, 0);
      }
    }
    return worst;
  }

  private double shapeAt(double ringMm, double zMm) {
    double beta = RingLoad.betaPerMm(tube.meanRadiusMm(), tube.wallMm());
    boolean lowEnd = ringMm - tube.lowZMm() < tube.highZMm() - ringMm;
    double ring = lowEnd ? ringMm - tube.lowZMm() : tube.highZMm() - ringMm;
    double place = lowEnd ? zMm - tube.lowZMm() : tube.highZMm() - zMm;
    return place < 0 || ring < 0 ? 0 : RingLoad.nearFreeEnd(beta * ring, beta * place);
  }
}
