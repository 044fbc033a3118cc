package org.counterpull.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.stock.StockException;

/**
 * A value of the file on its way to its meaning. Every reading method returns empty after it has
 * reported what is wrong.
 *
 * @param path where in the file
 * @param example what could stand here
 */
record Value(Notebook book, String path, Node node, String example) {
  static final double LEAST_SIZE_MM = 0.1;
  static final double FARTHEST_MM = 100_000;
  private static final int LONGEST_TEXT = 200;
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})([eE][+-]?\\d{1,3})?");

  /** Reports something that is wrong with this value. */
  <T> Optional<T> problem(String what, String tryThis) {
    book.problems().add(node.place(), path, what, tryThis);
    return Optional.empty();
  }

  /** The text, stripped, never blank. */
  Optional<String> text() {
    if (node instanceof Node.Refused) {
      return Optional.empty();
    }
    if (!(node instanceof Node.Scalar scalar)) {
      return problem(Node.words(node) + " where a single value is expected", example);
    }
    String text = scalar.text().strip();
    if (scalar.isNothing() || text.isEmpty()) {
      return problem("there is no value", example + ", or leave the key out");
    }
    if (text.length() > LONGEST_TEXT) {
      return problem("the text is longer than " + LONGEST_TEXT + " characters", example);
    }
    return Optional.of(text);
  }

  /** A quantity or stock that a parser of the text understands. */
  <T> Optional<T> parsed(Function<String, T> parser) {
    return text().flatMap(text -> parsed(text, parser));
  }

  /** The same for a piece of the text. */
  <T> Optional<T> parsed(String piece, Function<String, T> parser) {
    try {
      return Optional.of(parser.apply(piece));
    } catch (QuantityException e) {
      return problem(e.problem(), e.tryThis());
    } catch (StockException e) {
      return problem(e.problem(), e.tryThis());
    }
  }

  LengthUnit unit() {
    return book.unitAt(node.place());
  }

  /** A length of either sign, within 100 m. */
  Optional<Double> length() {
    return text().flatMap(this::length);
  }

  Optional<Double> length(String piece) {
    return parsed(piece, t -> QuantityParser.parseLengthMm(t, unit()))
        .flatMap(mm -> within(piece, mm, -FARTHEST_MM, FARTHEST_MM, "mm"));
  }

  /** A length above zero: 0.1 mm to 100 m. */
  Optional<Double> size() {
    return size(LEAST_SIZE_MM, FARTHEST_MM);
  }

  Optional<Double> size(double leastMm, double mostMm) {
    return text()
        .flatMap(
            t ->
                parsed(t, piece -> QuantityParser.parseLengthMm(piece, unit()))
                    .flatMap(mm -> within(t, mm, leastMm, mostMm, "mm")));
  }

  Optional<Double> quantity(Function<String, Double> parser, double low, double high, String unit) {
    return text().flatMap(t -> parsed(t, parser).flatMap(v -> within(t, v, low, high, unit)));
  }

  private Optional<Double> within(String text, double value, double low, double high, String unit) {
    if (value >= low && value <= high) {
      return Optional.of(value);
    }
    return problem(
        String.format(
            Locale.ROOT,
            "%s is %s the %s to %s %s that make sense here",
            Problems.quote(text),
            value < low ? "below" : "above",
            shortest(low),
            shortest(high),
            unit),
        example);
  }

  /** A number as short as it is exact. */
  static String shortest(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? String.format(Locale.ROOT, "%.0f", value)
        : Double.toString(value);
  }

  /** A plain number. */
  Optional<Double> number(double low, double high, String unit) {
    Optional<String> text = text();
    if (text.isPresent() && !NUMBER.matcher(text.get()).matches()) {
      String mend = unit.isEmpty() ? "a plain number" : "a plain number in " + unit;
      return problem(Problems.quote(text.get()) + " is no number", mend + ": " + example);
    }
    return text.flatMap(t -> within(t, Double.parseDouble(t), low, high, unit));
  }

  Optional<Boolean> truth() {
    return text()
        .flatMap(
            text ->
                switch (text.toLowerCase(Locale.ROOT)) {
                  case "true", "yes" -> Optional.of(true);
                  case "false", "no" -> Optional.of(false);
                  default ->
                      problem(Problems.quote(text) + " is neither true nor false", "true or false");
                });
  }

  /** One of some words; case and doubled spaces don't matter. */
  Optional<String> choice(List<String> words) {
    return text()
        .flatMap(
            text -> {
              String plain = text.replaceAll("\\s+", " ");
              Optional<String> found =
                  words.stream().filter(w -> w.equalsIgnoreCase(plain)).findFirst();
              return found.isPresent()
                  ? found
                  : problem(
                      Problems.quote(text) + " is not one of the words known here",
                      book.problems().mend(text, words));
            });
  }

  /** A name that must be known. */
  Optional<String> known(Collection<String> names, String kind) {
    return text().flatMap(text -> known(text, names, kind));
  }

  Optional<String> known(String text, Collection<String> names, String kind) {
    return names.contains(text)
        ? Optional.of(text)
        : problem(
            "there is no " + kind + " called " + Problems.quote(text),
            book.problems().mend(text, names));
  }

  /** The items of a list; a single value counts as a list of one. */
  List<Value> items() {
    if (node instanceof Node.Items list) {
      List<Value> items = new ArrayList<>();
      for (Node item : list.items()) {
        items.add(new Value(book, path + "[" + (items.size() + 1) + "]", item, example));
      }
      return items;
    }
    return node instanceof Node.Refused ? List.of() : List.of(this);
  }

  boolean isList() {
    return node instanceof Node.Items;
  }

  /** All items read alike; empty when one of them is wrong. */
  <T> Optional<List<T>> all(Function<Value, Optional<T>> reader) {
    List<T> read = new ArrayList<>();
    List<Value> items = items();
    for (Value item : items) {
      reader.apply(item).ifPresent(read::add);
    }
    if (items.isEmpty() && isList()) {
      return problem("the list is empty", example);
    }
    return read.size() == items.size() && !items.isEmpty()
        ? Optional.of(List.copyOf(read))
        : Optional.empty();
  }

  /** A point of three lengths. */
  Optional<Vector3D> point() {
    return triple("a point is [x, y, z]", Value::length);
  }

  /** A direction: one of the axes, or three numbers. */
  Optional<Vector3D> direction() {
    if (isList()) {
      return triple("a direction is an axis or [dx, dy, dz]", v -> v.number(-1e6, 1e6, ""))
          .flatMap(
              d ->
                  d.getNorm() > 1e-9
                      ? Optional.of(d.normalize())
                      : problem("a direction can't be [0, 0, 0]", "x, or [1, 0, 0]"));
    }
    return text()
        .map(t -> t.startsWith("+") ? t.substring(1) : t)
        .flatMap(t -> withText(t).choice(Words.DIRECTIONS))
        .map(Value::axis);
  }

  /** The same value with a piece of its text in place of the text. */
  Value withText(String text) {
    return new Value(book, path, new Node.Scalar(node.place(), text, true), example);
  }

  private static Vector3D axis(String word) {
    Vector3D axis =
        switch (word.charAt(word.length() - 1)) {
          case 'x' -> Vector3D.PLUS_I;
          case 'y' -> Vector3D.PLUS_J;
          default -> Vector3D.PLUS_K;
        };
    return word.startsWith("-") ? axis.negate() : axis;
  }

  private Optional<Vector3D> triple(String rule, Function<Value, Optional<Double>> reader) {
    List<Value> items = items();
    if (node instanceof Node.Refused) {
      return Optional.empty();
    }
    if (!isList() || items.size() != 3) {
      return problem(
          (isList() ? items.size() + " numbers: " : Node.words(node) + ": ") + rule, example);
    }
    return all(reader).map(c -> new Vector3D(c.get(0), c.get(1), c.get(2)));
  }

  /** A group of keys. */
  Optional<Fields> fields(KeyTable keys) {
    if (node instanceof Node.Table table) {
      return Optional.of(Fields.of(book, path, table, keys));
    }
    if (node instanceof Node.Refused) {
      return Optional.empty();
    }
    return problem(
        Node.words(node) + " where " + keys.what() + " with its keys is expected",
        "{" + keys.keys().get(0).name() + ": " + keys.keys().get(0).example() + ", ...}");
  }
}
