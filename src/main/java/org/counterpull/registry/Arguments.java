package org.counterpull.registry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.counterpull.naming.NearestNames;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;

/** The arguments of one evaluation: checked against what the formula asks, then read by name. */
public final class Arguments {
  private final Map<String, String> texts = new TreeMap<>();
  private final Map<String, Double> values = new TreeMap<>();

  private Arguments() {}

  /**
   * Reads texts by name.
   *
   * @throws ArgumentException for an unknown or missing argument, or a value that is no such thing
   */
  static Arguments read(List<Argument> expected, Map<String, String> given) {
    List<String> names = expected.stream().map(Argument::name).toList();
    for (String name : new TreeMap<>(given).keySet()) {
      if (!names.contains(name)) {
        throw unknown(name, names);
      }
    }
    Arguments arguments = new Arguments();
    for (Argument argument : expected) {
      Optional<String> text =
          Optional.ofNullable(given.get(argument.name())).or(argument::defaultText);
      if (text.isEmpty()) {
        throw new ArgumentException(
            argument.name() + " is missing: " + argument.meaning(), example(argument));
      }
      arguments.put(argument, text.get());
    }
    return arguments;
  }

  private static ArgumentException unknown(String name, List<String> names) {
    List<String> near = NearestNames.of(name, names);
    return new ArgumentException(
        "\"" + name + "\" is no argument of this formula",
        near.isEmpty()
            ? "one of " + String.join(", ", names)
            : "did you mean " + String.join(" or ", near));
  }

  private static String example(Argument argument) {
    if (!argument.words().isEmpty()) {
      return argument.name() + "=" + argument.words().get(0);
    }
    return argument
        .dimension()
        .map(d -> argument.name() + "=" + d.example().split(" or |, ")[0])
        .orElse(argument.name() + "=\"...\"");
  }

  private void put(Argument argument, String text) {
    if (argument.dimension().isPresent()) {
      values.put(argument.name(), value(argument, text));
      return;
    }
    String word =
        argument.words().stream()
            .filter(allowed -> allowed.equalsIgnoreCase(text.strip()))
            .findFirst()
            .orElse(text);
    if (!argument.words().isEmpty() && !argument.words().contains(word)) {
      throw new ArgumentException(
          argument.name() + ": \"" + text + "\" is not allowed",
          "one of " + String.join(", ", argument.words()));
    }
    texts.put(argument.name(), word);
  }

  private static double value(Argument argument, String text) {
    try {
      return QuantityParser.parse(argument.dimension().orElseThrow(), text, argument.unit());
    } catch (QuantityException e) {
      throw new ArgumentException(argument.name() + ": " + e.problem(), e.tryThis());
    }
  }

  /** A quantity in the unit of its argument. */
  public double value(String name) {
    return values.get(name);
  }

  /** A text or word. */
  public String text(String name) {
    return texts.get(name);
  }
}
