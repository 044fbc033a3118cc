package org.counterpull.machine;

/** How two parts meet, as far as heat and fusion care. */
public enum JointKind {
  TEE("tee", 3),
  BUTT("butt", 2),
  CORNER("corner", 2),
  LAP("lap", 3);

  private final String word;
  private final int heatPaths;

  JointKind(String word, int heatPaths) {
    this.word = word;
    this.heatPaths = heatPaths;
  }

  /** The kind as written in files. */
  public String word() {
    return word;
  }

  /** Ways that heat leaves the joint. */
  public int heatPaths() {
    return heatPaths;
  }

  /** Welded with fillets unless prepared. */
  public boolean isFillet() {
    return this != BUTT;
  }
}
