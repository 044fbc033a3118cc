package org.counterpull.shrinkage;

import java.util.List;
import java.util.Map;
import org.counterpull.quantity.Require;

/**
 * How far the truth may lie from the central value of a form, as factors on that value.
 *
 * @param quantity what is estimated
 * @param lowFactor least expected over central value
 * @param highFactor greatest expected over central value
 * @param calibratedLowFactor the same after one measured test piece of the shop's own
 * @param calibratedHighFactor the same after one measured test piece of the shop's own
 * @param basis where the band comes from
 */
public record ErrorBand(
    String quantity,
    double lowFactor,
    double highFactor,
    double calibratedLowFactor,
    double calibratedHighFactor,
    String basis) {

  /** All bands, in the order of the table. */
  public static final List<ErrorBand> ALL =
      Rows.of("bands.csv").stream().map(ErrorBand::from).toList();

  public ErrorBand {
    Require.positive("low factor", lowFactor, "");
    Require.positive("high factor", highFactor, "");
    if (!(lowFactor < calibratedLowFactor
        && calibratedLowFactor < 1
        && 1 < calibratedHighFactor
        && calibratedHighFactor < highFactor)) {
      throw new IllegalArgumentException("band of " + quantity + " must narrow with calibration");
    }
  }

  /** The band of that quantity. */
  public static ErrorBand of(String quantity) {
    return ALL.stream()
        .filter(band -> band.quantity.equals(quantity))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no error band for " + quantity));
  }

  private static ErrorBand from(Map<String, String> row) {
    return new ErrorBand(
        row.get("quantity"),
        Double.parseDouble(row.get("lowFactor")),
        Double.parseDouble(row.get("highFactor")),
        Double.parseDouble(row.get("calibratedLowFactor")),
        Double.parseDouble(row.get("calibratedHighFactor")),
        row.get("basis"));
  }
}
