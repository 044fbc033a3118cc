package org.counterpull.order;

import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;

/**
 * Tacks on one line: length four times the thicker wall, 10 to 50 mm; at the ends, and between them
 * every 25 thicknesses of the thinner wall, 100 to 300 mm (sheet below 3 mm: 50 mm).
 *
 * <p><b>Source:</b> length from memory: EN 1090-2 and AWS D1.1; pitch: common practice, no source.
 *
 * @param lengthMm of each tack
 * @param count on the line
 */
public record TackLayout(double lengthMm, int count) {
  private static final double HARD_STEEL_THICKNESS_MM = 20;
  private static final double HARD_STEEL_TACK_MM = 40;
  private static final double SHEET_MM = 3;

  /**
   * Tacks of a line.
   *
   * @param line the line
   * @param preheated true when the joint needs preheat
   */
  public static TackLayout of(WeldLine line, boolean preheated) {
    double thickMm = Math.max(line.firstWallMm(), line.secondWallMm());
    double thinMm = Math.min(line.firstWallMm(), line.secondWallMm());
    double lengthMm = Math.min(50, Math.max(10, 4 * thickMm));
    if (preheated || thickMm >= HARD_STEEL_THICKNESS_MM) {
      lengthMm = Math.max(lengthMm, HARD_STEEL_TACK_MM);
    }
    double lineMm = line.path().lengthMm();
    lengthMm = Math.min(lengthMm, Math.max(10, lineMm / 4));
    if (line.path() instanceof LinePath.Arc arc && arc.sweepRad() > Math.PI) {
      return new TackLayout(Math.min(lengthMm, lineMm / 8), 4);
    }
    if (lineMm < 4 * lengthMm) {
      return new TackLayout(Math.min(lengthMm, lineMm), lineMm < 3 * lengthMm ? 1 : 2);
    }
    double pitchMm = thinMm < SHEET_MM ? 50 : Math.min(300, Math.max(100, 25 * thinMm));
    return new TackLayout(lengthMm, Math.max(2, (int) Math.ceil(lineMm / pitchMm) + 1));
  }
}
