package org.counterpull.report;

import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Sentences with their measures in the units of the file. Where those are inches, every "12 mm",
 * "60 x 40 mm", "100 to 300 mm", "flat 60 x 10" and "80 C" in a sentence is put into inches and
 * degrees Fahrenheit; areas, speeds and heat per length stay as they are.
 */
final class Sentences {
  private static final String NUMBERS =
      "(?<![\\w./-])(\\d+(?:\\.\\d+)?(?: (?:x|to|and|or) \\d+(?:\\.\\d+)?)*) ";

  private static final Pattern LENGTHS = Pattern.compile(NUMBERS + "mm(?![\\w\u00b2\u00b3/])");
  private static final Pattern STOCK =
      Pattern.compile(
          "\\b((?:flat|plate|bar|tube|angle|channel|section) )"
              + "(\\d++(?:\\.\\d++)?+(?: x \\d++(?:\\.\\d++)?+)*+)(?! mm|\\w)");
  private static final Pattern TEMPERATURES = Pattern.compile(NUMBERS + "C(?!\\w|\\.\\d)");
  private static final Pattern BETWEEN =
      Pattern.compile("(?<= (?:x|to|and|or) )|(?= (?:x|to|and|or) )");

  private final boolean inches;
  private final Measures measures;

  Sentences(Measures measures, boolean inches) {
    this.measures = measures;
    this.inches = inches;
  }

  /** The same sentence in the units of the file. */
  String of(String metric) {
    if (!inches) {
      return metric;
    }
    String stock = STOCK.matcher(metric).replaceAll(this::stockInInches);
    String lengths = LENGTHS.matcher(stock).replaceAll(this::inInches);
    return TEMPERATURES.matcher(lengths).replaceAll(this::inFahrenheit);
  }

  /** All of them. */
  List<String> of(List<String> metric) {
    return metric.stream().map(this::of).toList();
  }

  private String stockInInches(MatchResult found) {
    return found.group(1) + each(found.group(2), number -> measures.inSentence(number)) + " in";
  }

  private String inInches(MatchResult found) {
    return each(found.group(1), number -> measures.inSentence(number)) + " in";
  }

  private String inFahrenheit(MatchResult found) {
    return each(
            found.group(1),
            number ->
                measures.temperature(Double.parseDouble(number)).first().replaceAll(" .*", ""))
        + " F";
  }

  private static String each(String list, UnaryOperator<String> number) {
    return Arrays.stream(BETWEEN.split(list))
        .map(piece -> Character.isDigit(piece.charAt(0)) ? number.apply(piece) : piece)
        .collect(Collectors.joining());
  }
}
