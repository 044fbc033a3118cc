package org.counterpull.arc;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Arc processes with their number in ISO 4063, the factor k of ISO/TR 17671-1, and the efficiency
 * that calorimeters measured.
 *
 * <p><b>Source:</b> k from EN 1011-1 / ISO/TR 17671-1. Efficiencies: DuPont and Marder, Welding
 * Journal 1995 (GMAW 0.84, GTAW 0.67); Pepe et al., Sci. Technol. Weld. Join. 16 (2011) p. 412
 * (GMAW about 0.85); Stenbacka et al., IIW XII-2070-12 (GTAW mean 0.77). k isn't an efficiency: it
 * is relative to submerged arc.
 */
public enum WeldingProcess {
  MMA("mma", 111, 0.8, 0.75, 0.80, 0.85, "smaw", "stick"),
  MAG("mag", 135, 0.8, 0.75, 0.80, 0.85, "gmaw"),
  MIG("mig", 131, 0.8, 0.75, 0.80, 0.85),
  /** Flux-cored with shielding gas. */
  FCAW("fcaw", 136, 0.8, 0.75, 0.80, 0.85, "fcaw-g"),
  /** Flux-cored without gas. */
  FCAW_S("fcaw-s", 114, 0.8, 0.75, 0.80, 0.85),
  TIG("tig", 141, 0.6, 0.65, 0.75, 0.82, "gtaw");

  private final String word;
  private final int iso4063;
  private final double k;
  private final double efficiencyLow;
  private final double efficiency;
  private final double efficiencyHigh;
  private final List<String> otherWords;

  WeldingProcess(
      String word,
      int iso4063,
      double k,
      double efficiencyLow,
      double efficiency,
      double efficiencyHigh,
      String... otherWords) {
    this.word = word;
    this.iso4063 = iso4063;
    this.k = k;
    this.efficiencyLow = efficiencyLow;
    this.efficiency = efficiency;
    this.efficiencyHigh = efficiencyHigh;
    this.otherWords = List.of(otherWords);
  }

  /** The process that a word or an ISO 4063 number means; case doesn't matter. */
  public static Optional<WeldingProcess> parse(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values()).filter(p -> p.isCalled(wanted)).findFirst();
  }

  /** All words understood, in order. */
  public static List<String> allWords() {
    return Arrays.stream(values()).flatMap(p -> p.words().stream()).toList();
  }

  private boolean isCalled(String wanted) {
    return words().contains(wanted) || Integer.toString(iso4063).equals(wanted);
  }

  /** The word for it in files. */
  public String word() {
    return word;
  }

  /** Every word understood for it. */
  public List<String> words() {
    return Stream.concat(Stream.of(word), otherWords.stream()).toList();
  }

  /** Number in ISO 4063. */
  public int iso4063() {
    return iso4063;
  }

  /** Factor k of ISO/TR 17671-1, relative to submerged arc. */
  public double k() {
    return k;
  }

  /** Least plausible measured efficiency: for "will it harden". */
  public double efficiencyLow() {
    return efficiencyLow;
  }

  /** Measured efficiency to expect. */
  public double efficiency() {
    return efficiency;
  }

  /** Greatest plausible measured efficiency: for "will the seal get hot". */
  public double efficiencyHigh() {
    return efficiencyHigh;
  }
}
