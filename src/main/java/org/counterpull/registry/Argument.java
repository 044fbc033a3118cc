package org.counterpull.registry;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Dimension;

/**
 * One argument of a published formula.
 *
 * @param name as typed before the equals sign
 * @param unit unit of a bare number, and of the value that the formula gets; "1" for a bare ratio,
 *     empty for words
 * @param dimension what other units are understood; empty for words
 * @param meaning in one phrase
 * @param defaultText what stands for it when it is left out; empty when it is required
 * @param words the only words allowed; empty where any text or a quantity is
 */
public record Argument(
    String name,
    String unit,
    Optional<Dimension> dimension,
    String meaning,
    Optional<String> defaultText,
    List<String> words) {

  public Argument {
    words = List.copyOf(words);
  }

  /** A quantity that must be given. */
  public static Argument quantity(String name, String unit, String meaning) {
    Dimension dimension =
        Dimension.ofUnit(unit)
            .orElseThrow(() -> new IllegalArgumentException(unit + " is no known unit"));
    return new Argument(name, unit, Optional.of(dimension), meaning, Optional.empty(), List.of());
  }

  /** Text that must be given, read by the formula itself. */
  public static Argument text(String name, String meaning) {
    return new Argument(name, "", Optional.empty(), meaning, Optional.empty(), List.of());
  }

  /** One of some words, that must be given. */
  public static Argument choice(String name, String meaning, List<String> words) {
    return new Argument(name, "", Optional.empty(), meaning, Optional.empty(), words);
  }

  /** The same argument with a value to take when it is left out. */
  public Argument orElse(String value) {
    return new Argument(name, unit, dimension, meaning, Optional.of(value), words);
  }

  /** True when it must be given. */
  public boolean required() {
    return defaultText.isEmpty();
  }
}
