package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Grading.Zone;

/** Cells of a tube: at least four through the wall, fine where arcs pass. */
final class TubeGrid {
  private static final int LEAST_THROUGH = 4;
  private static final double THROUGH_MM = 2;
  private static final double GROWTH = 1.4;
  private static final double COARSE_MM = 14;
  private static final double BEYOND_MM = 8;

  private TubeGrid() {}

  /**
   * The cells.
   *
   * @param innerMm inner radius
   * @param outerMm outer radius
   * @param lowMm one end
   * @param highMm the other end
   * @param seams welds on it; may be empty
   * @param angles edges around: those of tube and sleeve must lie over each other, or the chords of
   *     coarse cells stand further apart than the round faces
   * @param fineMm size of the fine cells along
   */
  static CylinderGrid of(
      double innerMm,
      double outerMm,
      double lowMm,
      double highMm,
      List<Seam> seams,
      double[] angles,
      double fineMm) {
    int through = (int) Math.max(LEAST_THROUGH, Math.ceil((outerMm - innerMm) / THROUGH_MM - 1e-9));
    double[] radii = new double[through + 1];
    for (int i = 0; i <= through; i++) {
      radii[i] = innerMm + (outerMm - innerMm) * i / through;
    }
    return new CylinderGrid(radii, angles, lengths(seams, lowMm, highMm, fineMm));
  }

  static double[] angles(List<Seam> seams, double radiusMm, double fineMm) {
    List<Zone> zones = new ArrayList<>();
    for (Seam seam : seams) {
      double low = Math.min(seam.fromRad(), seam.toRad()) * radiusMm - BEYOND_MM;
      double high = Math.max(seam.fromRad(), seam.toRad()) * radiusMm + BEYOND_MM;
      zones.add(new Zone(low, high));
    }
    double half = Math.PI * radiusMm;
    double coarse = Math.max(fineMm, Math.min(COARSE_MM, half / 6));
    double[] arcs = Grading.graded(-half, half, zones, fineMm, GROWTH, coarse);
    double[] angles = new double[arcs.length];
    for (int i = 0; i < arcs.length; i++) {
      angles[i] = i == arcs.length - 1 ? Math.PI : Math.PI * arcs[i] / half;
    }
    angles[0] = -Math.PI;
    return angles;
  }

  static double[] lengths(List<Seam> seams, double lowMm, double highMm, double fineMm) {
    List<Zone> zones = new ArrayList<>();
    for (Seam seam : seams) {
      double from = Math.min(seam.fromZMm(), seam.toZMm()) - BEYOND_MM;
      double to = Math.max(seam.fromZMm(), seam.toZMm()) + BEYOND_MM;
      zones.add(new Zone(from, to));
    }
    return Grading.graded(lowMm, highMm, zones, fineMm, GROWTH, COARSE_MM);
  }
}
