package org.counterpull.procedure;

/** Families of base material that procedures tell apart. */
public enum BaseMaterial {
  CARBON_STEEL("carbon-steel"),
  STAINLESS_STEEL("stainless-steel"),
  ALUMINIUM("aluminium");

  private final String word;

  BaseMaterial(String word) {
    this.word = word;
  }

  /** The material as written in files. */
  public String word() {
    return word;
  }
}
