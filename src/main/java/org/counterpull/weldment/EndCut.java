package org.counterpull.weldment;

import java.util.Optional;
import org.counterpull.space.Face;

/**
 * How an end of a part is cut.
 *
 * @param degreesOffSquare 0 for a square end, otherwise the angle of the cut off square, above 0
 *     and at most 75
 * @param longSide the face on which the part is longest; present exactly when the cut is not
 *     square. The stated length of a part is its longest length
 */
public record EndCut(double degreesOffSquare, Optional<Face> longSide) {
  public static final EndCut SQUARE = new EndCut(0, Optional.empty());

  public EndCut {
    if (!(degreesOffSquare >= 0 && degreesOffSquare <= 75)) {
      throw new IllegalArgumentException(
          "cut " + degreesOffSquare + " degrees off square is outside 0 to 75");
    }
    if (longSide.isPresent() != degreesOffSquare > 0) {
      throw new IllegalArgumentException("a mitred end, and only that, names its long side");
    }
  }

  /** True for a square end. */
  public boolean square() {
    return longSide.isEmpty();
  }
}
