package org.counterpull.heat.source;

import java.util.List;

/**
 * An arc from its start to its end.
 *
 * @param name as it is reported
 * @param netPowerW power that arrives in the metal: arc power times the physical efficiency
 * @param startS when it is struck
 * @param endS when it goes out
 * @param path its way, covered at constant speed
 * @param shape how its power is spread
 */
public record MovingSource(
    String name, double netPowerW, double startS, double endS, TravelPath path, SourceShape shape) {

  public MovingSource {
    if (!(netPowerW >= 0) || Double.isInfinite(netPowerW)) {
      throw new IllegalArgumentException("net power " + netPowerW + " W of " + name);
    }
    if (!(endS > startS) || Double.isInfinite(endS) || !(startS >= 0)) {
      throw new IllegalArgumentException(
          name + " must end after it starts: " + startS + " s to " + endS + " s");
    }
  }

  /** An arc that follows a path at a travel speed. */
  public static MovingSource along(
      String name,
      double netPowerW,
      double startS,
      TravelPath path,
      double travelSpeedMmPerS,
      SourceShape shape) {
    if (!(travelSpeedMmPerS > 0)) {
      throw new IllegalArgumentException(
          "travel speed " + travelSpeedMmPerS + " mm/s of " + name + " must be positive");
    }
    double end = startS + path.lengthMm() / travelSpeedMmPerS;
    return new MovingSource(name, netPowerW, startS, end, path, shape);
  }

  /** The same arc, struck at another time. */
  public MovingSource startingAt(double otherStartS) {
    return new MovingSource(name, netPowerW, otherStartS, otherStartS + endS - startS, path, shape);
  }

  public double travelSpeedMmPerS() {
    return path.lengthMm() / (endS - startS);
  }

  /** Energy of the whole arc. */
  public double energyJ() {
    return netPowerW * (endS - startS);
  }

  /** Whether it burns at some time between two times. */
  public boolean burns(double fromS, double toS) {
    return fromS < endS && toS > startS;
  }

  /** Energy between two times. */
  public double energyJ(double fromS, double toS) {
    return netPowerW * Math.max(0, Math.min(toS, endS) - Math.max(fromS, startS));
  }

  /** The stretches of its way between two times. */
  public List<TravelPath.Stretch> stretches(double fromS, double toS) {
    double speed = travelSpeedMmPerS();
    return path.between(
        speed * (Math.max(fromS, startS) - startS), speed * (Math.min(toS, endS) - startS));
  }
}
