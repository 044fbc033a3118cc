package org.counterpull.reading;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.feeding.ShieldingGas;

/**
 * Reads a shielding gas: {@code Ar + 18 CO2}, {@code 82 Ar + 18 CO2}, {@code CO2}, {@code none}.
 */
final class GasReading {
  private static final Pattern TERM =
      Pattern.compile("(?:(\\d{1,3}(?:\\.\\d{1,3})?)\\s*%?\\s*)?(ar|argon|co2|o2|he|helium)");

  private GasReading() {}

  static Optional<ShieldingGas> read(Value value) {
    Optional<String> text = value.text();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    String plain = text.get().toLowerCase(Locale.ROOT);
    if (plain.equals("none")) {
      return Optional.of(ShieldingGas.NONE);
    }
    Map<String, Double> shares = new TreeMap<>();
    String rest = "";
    double sum = 0;
    boolean understood = true;
    for (String piece : plain.split("\\+", -1)) {
      Matcher term = TERM.matcher(piece.strip());
      if (!term.matches() || shares.containsKey(word(term)) || rest.equals(word(term))) {
        understood = false;
      } else if (term.group(1) == null) {
        understood &= rest.isEmpty();
        rest = word(term);
      } else {
        shares.put(word(term), Double.parseDouble(term.group(1)));
        sum += Double.parseDouble(term.group(1));
      }
    }
    boolean closes = rest.isEmpty() ? Math.abs(sum - 100) <= 0.5 : sum < 100;
    if (!understood || !closes) {
      return value.problem(
          Problems.quote(text.get()) + " is no shielding gas that adds up to 100 %",
          "Ar + 18 CO2, CO2, Ar, or none");
    }
    if (!rest.isEmpty()) {
      shares.put(rest, 100 - sum);
    }
    double argon = Math.min(100, shares.getOrDefault("ar", 0.0));
    double co2 = Math.min(100 - argon, shares.getOrDefault("co2", 0.0));
    return Optional.of(new ShieldingGas(argon, co2));
  }

  private static String word(Matcher term) {
    String word = term.group(2);
    return word.startsWith("ar") ? "ar" : word.startsWith("he") ? "he" : word;
  }
}
