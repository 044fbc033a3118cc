package org.counterpull.preheat;

/**
 * Greatest interpass temperatures; a mill's own data sheet rules over them.
 *
 * <p>Values are limits of good practice. Sources stand at each.
 */
public enum MaxInterpass {
  /** S235 to S355, A36. From memory: EN 1011-2 practice, 230 to 300. */
  CARBON_MANGANESE(250, "common practice, no source"),
  /** From memory: A514, A517 and S690 to 25 mm. */
  QUENCHED_AND_TEMPERED_THIN(200, "common practice, no source"),
  /** From memory: A514, A517 and S690 over 25 mm. */
  QUENCHED_AND_TEMPERED_THICK(230, "common practice, no source"),
  /** EN practice 150; the navy standard allows 177. */
  AUSTENITIC_STAINLESS(150, "NAVSEA S9074-AR-GIB-010/278, table IV: 177; 150 in EN practice"),
  DUPLEX_STAINLESS(150, "NAVSEA S9074-AR-GIB-010/278, table IV: 204; 150 in EN practice"),
  SUPER_DUPLEX_STAINLESS(100, "common practice, no source"),
  MARTENSITIC_STAINLESS(260, "NAVSEA S9074-AR-GIB-010/278, table IV"),
  /** Heat-treatable aluminium and 5xxx over 3 % Mg, not longer than 15 minutes. */
  ALUMINIUM(120, "from memory: AWS D1.2"),
  /** Cold method with nickel electrodes in short beads. */
  CAST_IRON_COLD(65, "common practice, no source");

  private final double maxC;
  private final String source;

  MaxInterpass(double maxC, String source) {
    this.maxC = maxC;
    this.source = source;
  }

  /** Greatest interpass temperature in C. */
  public double maxC() {
    return maxC;
  }

  /** Where it comes from. */
  public String source() {
    return source;
  }

  /** Quenched and tempered steel by thickness. */
  public static MaxInterpass quenchedAndTempered(double thicknessMm) {
    return thicknessMm <= 25 ? QUENCHED_AND_TEMPERED_THIN : QUENCHED_AND_TEMPERED_THICK;
  }
}
