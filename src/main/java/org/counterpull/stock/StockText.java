package org.counterpull.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.naming.NearestNames;
import org.counterpull.quantity.LengthUnit;
import org.counterpull.quantity.QuantityException;
import org.counterpull.quantity.QuantityParser;

/** The reading of stock from text. */
final class StockText {
  private static final int LONGEST_TEXT = 120;
  private static final Pattern BETWEEN_DIMENSIONS = Pattern.compile("\\s*[x\u00d7*]\\s*");
  private static final Pattern RADIUS = Pattern.compile("(.*?)\\s+radius\\s+(.*)");
  private static final Pattern BARE = Pattern.compile("[-\\d./\\s]+");
  private static final Pattern WORDS_THEN_REST = Pattern.compile("([a-z -]*[a-z])\\b(.*)");

  private StockText() {}

  static Stock parse(String text, LengthUnit bare) {
    if (text.isBlank()) {
      throw new StockException("the stock is missing", Flat.EXAMPLE);
    }
    if (text.length() > LONGEST_TEXT) {
      throw new StockException("the stock text is longer than 120 characters", Flat.EXAMPLE);
    }
    String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Shape found = null;
    String foundWord = "";
    for (Shape shape : Shape.values()) {
      for (String word : shape.words) {
        if (word.length() > foundWord.length() && startsWithWord(plain, word)) {
          found = shape;
          foundWord = word;
        }
      }
    }
    if (found == null) {
      throw unknownShape(text, plain);
    }
    return read(found, text, plain.substring(foundWord.length()).strip(), bare);
  }

  private static boolean startsWithWord(String text, String word) {
    return text.startsWith(word)
        && (text.length() == word.length() || !Character.isLetter(text.charAt(word.length())));
  }

  private static Stock read(Shape shape, String text, String dimensions, LengthUnit bare) {
    String sizes = dimensions;
    double radiusMm = 0;
    Matcher radius = RADIUS.matcher(dimensions);
    if (radius.matches()) {
      if (!shape.takesRadius) {
        throw new StockException(
            shape.words.get(0) + " in \"" + text + "\" takes no radius", example(shape));
      }
      sizes = radius.group(1);
      radiusMm = lengthMm(shape, text, radius.group(2), bare);
    }
    String[] pieces = sizes.isEmpty() ? new String[0] : BETWEEN_DIMENSIONS.split(sizes, -1);
    if (pieces.length < shape.fewest || pieces.length > shape.most) {
      throw new StockException(
          String.format(
              Locale.ROOT,
              "%s takes %s, \"%s\" has %d",
              shape.words.get(0),
              count(shape),
              text,
              pieces.length),
          example(shape));
    }
    return shape.of(dimensionsMm(shape, text, pieces, bare), radiusMm);
  }

  /** From the last to the first, so that a bare dimension takes the unit of the one behind it. */
  private static double[] dimensionsMm(Shape shape, String text, String[] pieces, LengthUnit bare) {
    double[] mm = new double[pieces.length];
    String unitBehind = "";
    for (int i = pieces.length - 1; i >= 0; i--) {
      String piece = pieces[i].strip();
      boolean isBare = BARE.matcher(piece).matches();
      if (!isBare) {
        unitBehind = piece.replaceFirst("^.*[\\d.\\s]", "");
      }
      mm[i] = lengthMm(shape, text, isBare ? piece + " " + unitBehind : piece, bare);
    }
    return mm;
  }

  private static double lengthMm(Shape shape, String text, String piece, LengthUnit bare) {
    try {
      return QuantityParser.parseLengthMm(piece, bare);
    } catch (QuantityException e) {
      throw new StockException(e.problem() + " (stock \"" + text + "\")", example(shape));
    }
  }

  private static String count(Shape shape) {
    if (shape.most == 1) {
      return "1 dimension";
    }
    return (shape.fewest == shape.most ? "" : shape.fewest + " or ") + shape.most + " dimensions";
  }

  private static String example(Shape shape) {
    return switch (shape) {
      case ROUND_TUBE -> shape.example + " (outside diameter x wall)";
      case FLAT -> shape.example + " (width x thickness)";
      case ANGLE -> shape.example + " (upright leg x lying leg x thickness)";
      case CHANNEL, I_SECTION -> shape.example + " (height x width x web x flange)";
      case SQUARE_TUBE -> shape.example + " (side x wall)";
      case RECTANGULAR_TUBE -> shape.example + " (width x height x wall)";
      case PLATE, ROUND_BAR, SQUARE_BAR -> shape.example;
    };
  }

  private static StockException unknownShape(String text, String plain) {
    Matcher words = WORDS_THEN_REST.matcher(plain);
    String shown = words.matches() ? words.group(1) : text;
    List<String> known = Arrays.stream(Shape.values()).flatMap(s -> s.words.stream()).toList();
    List<String> near = NearestNames.of(shown, known);
    String mend =
        near.isEmpty()
            ? "one of "
                + String.join(", ", Arrays.stream(Shape.values()).map(s -> s.words.get(0)).toList())
            : "did you mean " + String.join(" or ", near);
    return new StockException(
        "\"" + shown + "\" is no shape of stock", mend + "; such as " + Flat.EXAMPLE);
  }
}
