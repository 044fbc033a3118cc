package org.counterpull.heatjob;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.LinePath;
import org.counterpull.weldment.RunGiven.SourceBox;

/**
 * A run as the heat sees it: where it goes, in which direction, and what each pass puts in.
 *
 * @param name of the run
 * @param path from where the arc starts to where it ends
 * @param opening out of the metal at mid-length, a unit vector
 * @param parts the one or two parts that it is on
 * @param stretches what of the line is welded: from and to along it, mm
 * @param passes in the order of welding
 * @param preheatC least temperature of the metal before the first pass; empty for none
 * @param interpassMaxC highest temperature of the metal before a pass; empty for none
 */
record WeldedRun(
    String name,
    LinePath path,
    Vector3D opening,
    List<String> parts,
    List<Stretch> stretches,
    List<Pass> passes,
    Optional<Double> preheatC,
    Optional<Double> interpassMaxC) {

  WeldedRun {
    parts = List.copyOf(parts);
    stretches = List.copyOf(stretches);
    passes = List.copyOf(passes);
  }

  /** A welded piece of a line. */
  record Stretch(double fromMm, double toMm) {
    double lengthMm() {
      return toMm - fromMm;
    }
  }

  /**
   * One pass.
   *
   * @param netJPerMm net heat per length
   * @param travelMmPerS travel speed
   * @param beadMm2 cross-section of the weld metal
   * @param box how the power is spread where the file says it
   */
  record Pass(double netJPerMm, double travelMmPerS, double beadMm2, Optional<SourceBox> box) {
    double powerW() {
      return netJPerMm * travelMmPerS;
    }

    /**
     * How far the bead reaches from its root: the leg of a fillet of its section. The density of
     * the source has fallen to 5 % there.
     */
    double radiusMm() {
      return box.map(b -> Math.max(b.widthMm() / 2, b.depthMm()))
          .orElse(Math.max(Bench.value("least bead radius"), Math.sqrt(2 * beadMm2)));
    }
  }

  double weldedMm() {
    return stretches.stream().mapToDouble(Stretch::lengthMm).sum();
  }

  /** Arc-on time of a pass, s. */
  double arcTimeS(Pass pass) {
    return weldedMm() / pass.travelMmPerS();
  }

  /** How far around the line cells are fine: two bead widths. */
  double fineReachMm() {
    return 2 * passes.stream().mapToDouble(Pass::radiusMm).max().orElse(0) + 2;
  }
}
