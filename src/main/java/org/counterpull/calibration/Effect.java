package org.counterpull.calibration;

import java.util.Arrays;
import java.util.Optional;
import org.counterpull.shrinkage.ErrorBand;

/** What a run does to its parts, each with a factor of its own. */
public enum Effect {
  ACROSS("across", "transverse shrinkage", "fillet transverse shrinkage"),
  ANGLE("angle", "angle", "angle of a fillet or bead"),
  ALONG("along", "shrinkage force along the run", "tendon force");

  private final String word;
  private final String meaning;
  private final String band;

  Effect(String word, String meaning, String band) {
    this.word = word;
    this.meaning = meaning;
    this.band = band;
  }

  /** The effect that a word in a file means. */
  public static Optional<Effect> named(String word) {
    return Arrays.stream(values()).filter(e -> e.word.equals(word)).findFirst();
  }

  /** The word used in files. */
  public String word() {
    return word;
  }

  /** In words. */
  public String meaning() {
    return meaning;
  }

  /** The published band of the forms for it. */
  public ErrorBand published() {
    return ErrorBand.of(band);
  }
}
