package org.counterpull.contact;

/**
 * What has to get to a line: torch or electrode with holder, as a cone whose tip is on the line.
 *
 * <p>Source: common practice, no source: 30 degrees about the bisector of the corner.
 *
 * @param coneDeg full angle of the cone
 * @param lengthMm from the tip
 * @param tiltDeg how far it may be tilted off the bisector, across the line and along it
 */
public record Torch(double coneDeg, double lengthMm, double tiltDeg) {
  /** 30 degrees, 150 mm, tilted up to 15 degrees. */
  public static final Torch USUAL = new Torch(30, 150, 15);

  public Torch {
    if (!(coneDeg > 0 && coneDeg < 120 && lengthMm > 0 && tiltDeg >= 0 && tiltDeg < 60)) {
      throw new IllegalArgumentException(
          "torch of " + coneDeg + " degrees, " + lengthMm + " mm, tilted " + tiltDeg + " degrees");
    }
  }
}
