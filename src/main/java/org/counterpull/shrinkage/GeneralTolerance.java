package org.counterpull.shrinkage;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * General tolerances of welded constructions: linear (classes A to D), angular (A to D) and
 * straightness, flatness, parallelism (E to H).
 *
 * <p>The length is the nominal size for linear, that of the shorter leg for angular, that of the
 * longer side for straight. An upper limit of a range belongs to the range. Below the first range
 * the first value is returned with a warning.
 */
public final class GeneralTolerance {
  public static final Formula LENGTH =
      new Formula(
          "tolerance",
          "permissible deviation, plus or minus",
          "mm",
          "ISO 13920:1996, tables 1 and 3");

  public static final Formula ANGLE =
      new Formula(
          "tolerance",
          "permissible deviation, plus or minus",
          "minutes",
          "ISO 13920:1996, table 2");

  /** What is toleranced. */
  public enum Kind {
    LINEAR("iso13920-linear.csv", 2),
    ANGULAR("iso13920-angular.csv", 0),
    STRAIGHT("iso13920-straight.csv", 30);

    private final List<Map<String, String>> rows;
    private final double fromMm;

    Kind(String table, double fromMm) {
      this.rows = Rows.of(table);
      this.fromMm = fromMm;
    }

    /** Kind by its lower-case word. */
    public static Kind named(String word) {
      for (Kind kind : values()) {
        if (kind.name().toLowerCase(Locale.ROOT).equals(word)) {
          return kind;
        }
      }
      throw new IllegalArgumentException(
          "kind of tolerance " + word + " must be linear, angular or straight");
    }
  }

  private GeneralTolerance() {}

  /**
   * The permissible deviation.
   *
   * @param toleranceClass A to D, or E to H for {@link Kind#STRAIGHT}
   * @param lengthMm the length that the range is looked up by, mm
   * @param kind what is toleranced
   */
  public static Computed of(String toleranceClass, double lengthMm, Kind kind) {
    Require.positive("length", lengthMm, "mm");
    if (toleranceClass.equals("upTo") || !kind.rows.get(0).containsKey(toleranceClass)) {
      throw new IllegalArgumentException(
          "class "
              + toleranceClass
              + (kind == Kind.STRAIGHT ? " must be E to H" : " must be A to D")
              + " for a tolerance of kind "
              + kind.name().toLowerCase(Locale.ROOT));
    }
    Formula formula = kind == Kind.ANGULAR ? ANGLE : LENGTH;
    return formula.result(
        lookUp(toleranceClass, lengthMm, kind),
        new Limits()
            .within("length", lengthMm, kind.fromMm, Double.POSITIVE_INFINITY, "mm")
            .outside());
  }

  private static double lookUp(String toleranceClass, double lengthMm, Kind kind) {
    for (Map<String, String> row : kind.rows) {
      if (lengthMm <= Double.parseDouble(row.get("upTo"))) {
        return Double.parseDouble(row.get(toleranceClass));
      }
    }
    throw new IllegalStateException("no last range for a length of " + lengthMm + " mm");
  }
}
