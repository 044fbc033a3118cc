package org.counterpull.filler;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.counterpull.steel.Family;

/** Which metals a filler joins. */
public enum Joined {
  CARBON("carbon steel"),
  QUENCHED_AND_TEMPERED("quenched and tempered steel"),
  STAINLESS("stainless steel"),
  STAINLESS_TO_CARBON("stainless steel to carbon steel"),
  ALUMINIUM("aluminium"),
  CAST_IRON("cast iron"),
  NOTHING_TOGETHER("metals that no arc joins");

  private final String words;

  Joined(String words) {
    this.words = words;
  }

  /** The pair in words. */
  public String words() {
    return words;
  }

  /**
   * What the parts of a joint are together.
   *
   * @param families of both parts; carbon steel where none is known
   */
  public static Joined of(Collection<Family> families) {
    Set<Family> both = families.isEmpty() ? EnumSet.of(Family.CARBON) : EnumSet.copyOf(families);
    if (both.contains(Family.ALUMINIUM)) {
      return both.size() == 1 ? ALUMINIUM : NOTHING_TOGETHER;
    }
    if (both.contains(Family.CAST_IRON)) {
      return CAST_IRON;
    }
    if (both.contains(Family.STAINLESS)) {
      return both.size() == 1 ? STAINLESS : STAINLESS_TO_CARBON;
    }
    return both.contains(Family.CARBON) ? CARBON : QUENCHED_AND_TEMPERED;
  }
}
