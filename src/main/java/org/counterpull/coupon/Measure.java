package org.counterpull.coupon;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.counterpull.calibration.Effect;

/** What can be read off a test piece. */
public enum Measure {
  /** By how much the wings of the plate turn, rad. */
  ANGLE("angle", Effect.ANGLE, Math.toRadians(0.1)),
  /** By how much marks across the weld come closer, mm. */
  SHRINKAGE("shrinkage", Effect.ACROSS, 0.05),
  /** By how much a bar with a bead along its edge bows, mm. */
  CAMBER("camber", Effect.ALONG, 0.2);

  private final String word;
  private final Effect effect;
  private final double error;

  Measure(String word, Effect effect, double error) {
    this.word = word;
    this.effect = effect;
    this.error = error;
  }

  /** The measure that a word means. */
  public static Optional<Measure> named(String word) {
    return Arrays.stream(values()).filter(m -> m.word.equals(word)).findFirst();
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Measure::word).toList();
  }

  /** The word used on the command line. */
  public String word() {
    return word;
  }

  /** The effect whose factor it tells. */
  public Effect effect() {
    return effect;
  }

  /** Error of measuring with the tools of a bench, in the measure's own unit (a judgement). */
  public double error() {
    return error;
  }
}
