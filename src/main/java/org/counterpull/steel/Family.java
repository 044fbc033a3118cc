package org.counterpull.steel;

/** Which rules of welding apply to a grade. */
public enum Family {
  CARBON("carbon steel"),
  QUENCHED_AND_TEMPERED("quenched and tempered steel"),
  STAINLESS("austenitic stainless steel"),
  ALUMINIUM("aluminium"),
  CAST_IRON("cast iron");

  private final String words;

  Family(String words) {
    this.words = words;
  }

  /** The family in words. */
  public String words() {
    return words;
  }

  /** True where carbon equivalents and hydrogen preheat mean something. */
  public boolean hardensByCarbon() {
    return switch (this) {
      case CARBON, QUENCHED_AND_TEMPERED -> true;
      case STAINLESS, ALUMINIUM, CAST_IRON -> false;
    };
  }
}
