package org.counterpull.fit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class as written beside a size: H8 for a hole, f7 for a shaft.
 *
 * <p>Source: from memory: ISO 286-1 and ISO 286-2. Known: holes H, shafts d, e, f, g, h; grades 6
 * to 11; sizes up to 500 mm.
 *
 * @param letter its fundamental deviation: H for holes, small letters for shafts
 * @param grade its tolerance grade
 */
public record ToleranceClass(char letter, int grade) {
  private static final Pattern FORM = Pattern.compile("\\s*([Hdefgh])\\s*([0-9]{1,2})\\s*");
  private static final List<String[]> SHAFTS = Rows.of("shafts.csv");

  public ToleranceClass {
    if ("Hdefgh".indexOf(letter) < 0) {
      throw new IllegalArgumentException(
          "tolerance class " + letter + grade + " is not known here");
    }
    if (grade < ToleranceGrade.FINEST || grade > ToleranceGrade.COARSEST) {
      throw new IllegalArgumentException(
          String.format(Locale.ROOT, "tolerance grade %d is not 6 to 11", grade));
    }
  }

  /** The class of that text; empty where it isn't one of those known here. */
  public static Optional<ToleranceClass> parse(String text) {
    Matcher matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    int grade = Integer.parseInt(matcher.group(2));
    return grade < ToleranceGrade.FINEST || grade > ToleranceGrade.COARSEST
        ? Optional.empty()
        : Optional.of(new ToleranceClass(matcher.group(1).charAt(0), grade));
  }

  /** Whether it is for a hole. */
  public boolean hole() {
    return letter == 'H';
  }

  /** Distance between the limits, mm. */
  public double widthMm(double nominalMm) {
    return ToleranceGrade.of(grade, nominalMm).value();
  }

  /** Lower limit less the nominal size, mm. */
  public double lowerMm(double nominalMm) {
    return hole() ? 0 : upperMm(nominalMm) - widthMm(nominalMm);
  }

  /** Upper limit less the nominal size, mm. */
  public double upperMm(double nominalMm) {
    if (hole()) {
      return widthMm(nominalMm);
    }
    int column = Arrays.asList(SHAFTS.get(0)).indexOf(String.valueOf(letter));
    double below = Double.parseDouble(ToleranceGrade.row(SHAFTS, nominalMm)[column]);
    return below == 0 ? 0 : -below / 1000;
  }

  @Override
  public String toString() {
    return letter + Integer.toString(grade);
  }
}
