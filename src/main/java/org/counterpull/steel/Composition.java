package org.counterpull.steel;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * What a steel is made of besides iron.
 *
 * @param percent mass percent by element; missing elements are zero
 */
public record Composition(Map<Element, Double> percent) {

  public Composition {
    EnumMap<Element, Double> copy = new EnumMap<>(Element.class);
    copy.putAll(percent);
    double sum = 0;
    for (Map.Entry<Element, Double> entry : copy.entrySet()) {
      double share = entry.getValue();
      if (!(share >= 0 && share <= 100)) {
        throw new IllegalArgumentException(
            entry.getKey().symbol() + " " + share + " % must lie from 0 to 100 %");
      }
      sum += share;
    }
    if (sum > 100) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "the elements add up to %.4g %%, more than 100 %%", sum));
    }
    percent = Collections.unmodifiableMap(copy);
  }

  /** Reads {@code C 0.16 Mn 1.4}: symbols and percentages in turn. */
  public static Composition parse(String text) {
    EnumMap<Element, Double> percent = new EnumMap<>(Element.class);
    String[] words = text.strip().split("[\\s=]+");
    if (words.length % 2 != 0) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is no composition; write symbol and percent in turn: C 0.16 Mn 1.4");
    }
    for (int i = 0; i < words.length; i += 2) {
      percent.put(element(words[i]), number(words[i + 1]));
    }
    return new Composition(percent);
  }

  private static Element element(String symbol) {
    return Element.parse(symbol)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\"" + symbol + "\" is none of " + String.join(" ", Element.symbols())));
  }

  private static double number(String text) {
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("\"" + text + "\" is no percentage", e);
    }
  }

  /** Mass percent of an element, zero when not given. */
  public double of(Element element) {
    return percent.getOrDefault(element, 0.0);
  }

  double c() {
    return of(Element.C);
  }

  double si() {
    return of(Element.SI);
  }

  double mn() {
    return of(Element.MN);
  }

  double cr() {
    return of(Element.CR);
  }

  double mo() {
    return of(Element.MO);
  }

  double v() {
    return of(Element.V);
  }

  double ni() {
    return of(Element.NI);
  }

  double cu() {
    return of(Element.CU);
  }

  double nb() {
    return of(Element.NB);
  }

  double b() {
    return of(Element.B);
  }

  double n() {
    return of(Element.N);
  }
}
