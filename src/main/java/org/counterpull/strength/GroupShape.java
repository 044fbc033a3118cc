package org.counterpull.strength;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Require;

/**
 * Usual weld groups in closed form, unit throat, {@code b} level and {@code d} upright:
 *
 * <pre>
 * group     length    modulus, level axis    polar moment
 * line      d         d^2/6                  d^3/12
 * uprights  2d        d^2/3                  d (3b^2 + d^2)/6
 * levels    2b        b d                    b (3d^2 + b^2)/6
 * channel   2b + d    b d + d^2/6            (8b^3 + 6b d^2 + d^3)/12 - b^4/(2b + d)
 * angle     b + d     (4b d + d^2)/6         ((b + d)^4 - 6b^2 d^2)/(12 (b + d))
 * box       2b + 2d   b d + d^2/3            (b + d)^3/6
 * circle    pi d      pi d^2/4               pi d^3/4
 * </pre>
 *
 * <p><b>Source:</b> Unsworth, Design of Modern Steel Railway Bridges, 2010, table 9.1; derived
 * anew.
 *
 * <p><b>Valid for:</b> any size. The modulus of the angle is that at its level weld; the tip of the
 * upright one has less, {@code d^2 (4b + d)/(6 (2b + d))}.
 */
public enum GroupShape {
  LINE,
  UPRIGHTS,
  LEVELS,
  CHANNEL,
  ANGLE,
  BOX,
  CIRCLE;

  private static final String SOURCE =
      "Unsworth, Design of Modern Steel Railway Bridges, 2010, table 9.1; derived anew";

  public static final Formula MODULUS =
      new Formula(
          "weld-line-modulus", "section modulus of a weld group, level axis", "mm2", SOURCE);

  public static final Formula POLAR =
      new Formula("weld-line-polar-moment", "polar moment of a weld group", "mm3", SOURCE);

  /** The group as written. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The group by its word, one of {@link #words()}. */
  public static GroupShape of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /** All groups as written. */
  public static List<String> words() {
    return Arrays.stream(values()).map(GroupShape::word).toList();
  }

  /** Length of weld, mm. */
  public double lengthMm(double bMm, double dMm) {
    check(bMm, dMm);
    return switch (this) {
      case LINE -> dMm;
      case UPRIGHTS -> 2 * dMm;
      case LEVELS -> 2 * bMm;
      case CHANNEL -> 2 * bMm + dMm;
      case ANGLE -> bMm + dMm;
      case BOX -> 2 * (bMm + dMm);
      case CIRCLE -> Math.PI * dMm;
    };
  }

  /**
   * Section modulus.
   *
   * @param b level size, mm, 0 or above; not read for a line and a circle
   * @param d upright size or diameter, mm, above 0
   */
  public Computed modulus(double b, double d) {
    check(b, d);
    return MODULUS.result(
        switch (this) {
          case LINE -> d * d / 6;
          case UPRIGHTS -> d * d / 3;
          case LEVELS -> b * d;
          case CHANNEL -> b * d + d * d / 6;
          case ANGLE -> (4 * b * d + d * d) / 6;
          case BOX -> b * d + d * d / 3;
          case CIRCLE -> Math.PI * d * d / 4;
        });
  }

  /** Polar moment; arguments as for {@link #modulus}. */
  public Computed polarMoment(double b, double d) {
    check(b, d);
    return POLAR.result(
        switch (this) {
          case LINE -> d * d * d / 12;
          case UPRIGHTS -> d * (3 * b * b + d * d) / 6;
          case LEVELS -> b * (3 * d * d + b * b) / 6;
          case CHANNEL ->
              (8 * b * b * b + 6 * b * d * d + d * d * d) / 12 - Math.pow(b, 4) / (2 * b + d);
          case ANGLE -> (Math.pow(b + d, 4) - 6 * b * b * d * d) / (12 * (b + d));
          case BOX -> Math.pow(b + d, 3) / 6;
          case CIRCLE -> Math.PI * d * d * d / 4;
        });
  }

  private static void check(double bMm, double dMm) {
    Require.notNegative("level size", bMm, "mm");
    Require.positive("upright size", dMm, "mm");
  }
}
