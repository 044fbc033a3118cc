package org.counterpull.jointplan;

import java.util.List;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.WeldLine;
import org.counterpull.preheat.CombinedThickness;
import org.counterpull.quantity.Printed;
import org.counterpull.stock.RoundBar;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMass;
import org.counterpull.weldment.PartMetal;

/**
 * What carries heat away from a joint, by the real sections of its parts.
 *
 * <p>A wall counts with its thickness. A solid round bar counts for the cooling time as a plate of
 * its mean chord, {@code pi D/4}, and for the preheat with its diameter. For the combined thickness
 * of EN 1011-2 method A each way that heat can go counts with its thickness averaged over 75 mm: a
 * lug, bush or narrow bar that ends sooner counts by as much less.
 *
 * <p><b>Source:</b> averaging over 75 mm and bars to 40 mm by their diameter from memory: EN 1011-2
 * C.2.4; mean chord derived: area over diameter.
 *
 * @param coolingMm thickness for the cooling time: the smaller of the two
 * @param preheatMm thickness for the preheat: the larger of the two
 * @param combinedMm combined thickness
 * @param words how it comes about
 */
record HeatSink(double coolingMm, double preheatMm, double combinedMm, String words) {
  private static final double MM3_PER_M3 = 1e9;
  private static final double NEAR_MM = 0.01;

  /**
   * Of a joint.
   *
   * @param first the part that is fitted
   * @param second the part that it is fitted onto
   * @param form how they meet
   * @param lines all lines of the contact, at least one
   */
  static HeatSink of(Part first, Part second, JointForm form, List<WeldLine> lines) {
    double weldMm = lines.stream().mapToDouble(l -> l.path().lengthMm()).max().orElseThrow();
    WeldLine line = lines.get(0);
    Way one = Way.of(first, line.firstWallMm(), weldMm, 1);
    int through =
        switch (form) {
          case TEE, LAP -> 2;
          case BUTT, CORNER, EDGE -> 1;
        };
    Way other = Way.of(second, line.secondWallMm(), weldMm, through);
    double combined =
        through == 2
            ? CombinedThickness.filletMm(other.averagedMm, other.averagedMm, one.averagedMm)
            : CombinedThickness.buttMm(one.averagedMm, other.averagedMm);
    return new HeatSink(
        Math.min(one.coolingMm, other.coolingMm),
        Math.max(one.preheatMm, other.preheatMm),
        combined,
        words(one, other, through));
  }

  private static String words(Way one, Way other, int through) {
    return Printed.number(one.averagedMm, 3)
        + " + "
        + (through == 2 ? "2 x " : "")
        + Printed.number(other.averagedMm, 3)
        + " mm, each averaged over 75 mm";
  }

  /** One way that heat can go, and how thick it is. */
  private record Way(double coolingMm, double preheatMm, double averagedMm) {

    static Way of(Part part, double wallMm, double weldMm, int ways) {
      double diameterMm = part.stock().acrossMm();
      // A disc cut from a bar is welded round its edge: there its length is the wall.
      boolean round =
          part.stock() instanceof RoundBar && Math.abs(wallMm - diameterMm / 2) < NEAR_MM;
      double coolingMm = round ? Math.PI / 4 * diameterMm : wallMm;
      double preheatMm = round ? diameterMm : wallMm;
      double volumeMm3 = PartMass.kg(part) / PartMetal.densityKgPerM3(part) * MM3_PER_M3;
      double reachMm = volumeMm3 / (coolingMm * weldMm) / ways;
      double share = Math.min(1, reachMm / CombinedThickness.AVERAGED_OVER_MM);
      return new Way(coolingMm, preheatMm, coolingMm * share);
    }
  }
}
