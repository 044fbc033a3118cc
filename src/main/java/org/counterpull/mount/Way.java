package org.counterpull.mount;

import java.util.Locale;

/** The ways of fastening something to a tube, from the shortest to the most careful. */
public enum Way {
  AS_DRAWN("as drawn", true),
  SMALL_PASSES("smaller passes and waits", true),
  STRIPPED("stripped and cooled", true),
  HEAT_SINK("heat sink", true),
  SLEEVE("sleeve, not welded to the tube", false),
  SLEEVE_RING("sleeve, ring weld at its end", true),
  SADDLE("band or saddle", false),
  CLAMP("split clamp", false),
  PINNED("bolted or pinned mount", false);

  private final String words;
  private final boolean arcOnTube;

  Way(String words, boolean arcOnTube) {
    this.words = words;
    this.arcOnTube = arcOnTube;
  }

  /** The words used in outputs. */
  public String words() {
    return words;
  }

  /** The word used in JSON. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whether an arc burns on the tube itself. */
  public boolean arcOnTube() {
    return arcOnTube;
  }
}
