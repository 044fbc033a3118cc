package org.counterpull.contact;

import java.util.function.DoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.position.WeldingPosition;

/**
 * Welding positions by ISO 6947 from the slope of a line and the direction in which its corner
 * opens.
 *
 * <p>Every direction gets a position, so the sectors are wider than the standard's tolerances; they
 * meet half-way between its main positions:
 *
 * <ul>
 *   <li>a line that rises by more than 45 degrees is vertical (PF; the plan may choose PG)
 *   <li>otherwise, for an inside corner, by the elevation of the opening: PA above 67.5, PB to
 *       22.5, PC to -22.5, PD to -67.5 degrees, PE below
 *   <li>for a butt or an outside corner there are no PB and PD: PA from 45, PC to -45, PE below
 * </ul>
 *
 * <p>A line whose position changes along it, such as a circle in an upright plane, has the hardest:
 * PE, PD, PF, PC, PB, PA in that order. The standard's pipe positions are not used.
 */
final class Iso6947 {
  private static final double VERTICAL_DEG = 45;
  private static final double SLACK_DEG = 1e-6;
  private static final int PLACES = 24;

  private Iso6947() {}

  /**
   * @param up unit vector up: z as the weldment lies, -z turned over
   */
  static WeldingPosition of(
      LinePath path, DoubleFunction<Corner> corners, WeldLine.Shape shape, Vector3D up) {
    int places = path instanceof LinePath.Straight ? 1 : PLACES;
    WeldingPosition hardest = WeldingPosition.PA;
    for (int i = 0; i < places; i++) {
      Corner corner = corners.apply(path.lengthMm() * (i + 0.5) / places);
      WeldingPosition here = of(corner.tangent(), corner.opening(), shape, up);
      hardest = hardness(here) > hardness(hardest) ? here : hardest;
    }
    return hardest;
  }

  static WeldingPosition of(Vector3D tangent, Vector3D opening, WeldLine.Shape shape, Vector3D up) {
    double slope = Math.toDegrees(Math.asin(Math.min(1, Math.abs(tangent.dotProduct(up)))));
    if (slope > VERTICAL_DEG + SLACK_DEG) {
      return WeldingPosition.PF;
    }
    double rise = Math.max(-1, Math.min(1, opening.dotProduct(up)));
    double elevation = Math.toDegrees(Math.asin(rise)) + SLACK_DEG;
    return switch (shape) {
      case FILLET, FLARE_BEVEL, FLARE_V -> corner(elevation);
      case BUTT, OUTSIDE_CORNER, PLUG -> groove(elevation);
    };
  }

  private static WeldingPosition corner(double elevation) {
    if (elevation >= 67.5) {
      return WeldingPosition.PA;
    } else if (elevation >= 22.5) {
      return WeldingPosition.PB;
    } else if (elevation >= -22.5) {
      return WeldingPosition.PC;
    }
    return elevation >= -67.5 ? WeldingPosition.PD : WeldingPosition.PE;
  }

  private static WeldingPosition groove(double elevation) {
    if (elevation >= 45) {
      return WeldingPosition.PA;
    }
    return elevation >= -45 ? WeldingPosition.PC : WeldingPosition.PE;
  }

  private static int hardness(WeldingPosition position) {
    return switch (position) {
      case PA -> 0;
      case PB -> 1;
      case PC -> 2;
      case PF, PG -> 3;
      case PD -> 4;
      case PE -> 5;
    };
  }
}
