package org.counterpull.procedure;

/** What a procedure's passes fill. */
public enum JointForm {
  SQUARE_BUTT("square-butt", false),
  V_BUTT("v-butt", false),
  DOUBLE_V_BUTT("double-v-butt", false),
  TEE_FILLET("tee-fillet", true),
  LAP_FILLET("lap-fillet", true),
  ROOT_PASS("root-pass", false);

  private final String word;
  private final boolean fillet;

  JointForm(String word, boolean fillet) {
    this.word = word;
    this.fillet = fillet;
  }

  /** The form as written in files. */
  public String word() {
    return word;
  }

  /** The weld is a fillet. */
  public boolean isFillet() {
    return fillet;
  }
}
