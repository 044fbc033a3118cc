package org.counterpull.steel;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The alloying elements that carbon equivalents and hardness formulas ask for. */
public enum Element {
  C,
  SI,
  MN,
  CR,
  MO,
  V,
  NI,
  CU,
  NB,
  B,
  N;

  /** The chemical symbol. */
  public String symbol() {
    return name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
  }

  /** The element of a symbol; case doesn't matter. */
  public static Optional<Element> parse(String symbol) {
    String wanted = symbol.strip();
    return Arrays.stream(values()).filter(e -> e.name().equalsIgnoreCase(wanted)).findFirst();
  }

  /** All symbols. */
  public static List<String> symbols() {
    return Arrays.stream(values()).map(Element::symbol).toList();
  }
}
