package org.counterpull.heat.face;

/** The range of an emissivity. */
final class Emissivity {
  private Emissivity() {}

  static void require(double emissivity) {
    if (!(emissivity >= 0 && emissivity <= 1)) {
      throw new IllegalArgumentException("emissivity " + emissivity + " must be from 0 to 1");
    }
  }
}
