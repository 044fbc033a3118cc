package org.counterpull.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.plan.PinRow;

/** How a row of bores is held, tacked, turned and greased, in words. */
final class PinBenchWords {
  /** Seams nearer to a nipple than this lie in the way of its hole, degrees. */
  private static final double CLEAR_OF_SEAM_DEG = 30;

  private final Measures measures;

  PinBenchWords(Measures measures) {
    this.measures = measures;
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Rod, spacers, tacks. */
  String bench(PinRow row) {
    String rod =
        row.bench()
            .rod()
            .map(
                name -> "Through-rod: " + name + ", " + measures.length(row.bench().rodMm()).text())
            .orElse(
                "Through-rod: one straight rod of "
                    + measures.length(row.bench().rodMm()).text()
                    + (row.hinge()
                        ? " through all bores; the file names none"
                        : " or the pin itself"));
    String spacers =
        row.bench().spacer()
            ? "; spacer between them"
            : row.warm()
                .sidePlayMm()
                .map(mm -> "; shims of " + measures.length(mm).text() + " between neighbours")
                .orElse("");
    return rod
        + spacers
        + ". Tack in this order, each at two opposite places: "
        + String.join(", ", row.bench().tackOrder())
        + ".";
  }

  /** Where in the order to stop and turn it; empty where nothing is welded at the bores. */
  static Optional<String> turning(PinRow row) {
    List<Integer> after = row.bench().turnAfter();
    if (after.isEmpty()) {
      return Optional.empty();
    }
    String tried =
        row.bench().triedAt() > 0 ? ", and tried cold at step " + row.bench().triedAt() : "";
    String steps = String.join(", ", after.stream().map(String::valueOf).toList());
    return Optional.of(
        "Stop and turn "
            + (row.bench().rod().isPresent() || row.hinge() ? "the rod" : "the pin")
            + " by hand after step"
            + (after.size() > 1 ? "s " : " ")
            + steps
            + (row.hinge() ? tried : "")
            + ". Where it grips, stop: weld the other side next, do not force it.");
  }

  /** A fitting: when it is drilled, where it looks, whether the gun gets there. */
  static String grease(PinRow.Grease grease) {
    String drilled =
        grease.drilledAt() > 0
            ? "drilled at step " + grease.drilledAt() + ", before the first arc"
            : "not drilled by a step of this plan";
    String seam =
        grease
            .fromSeamDeg()
            .map(
                deg ->
                    text("%.0f degrees round from the nearest seam", deg)
                        + (deg < CLEAR_OF_SEAM_DEG ? ": too near, turn it away" : ""))
            .orElse("");
    String gun =
        grease
            .reached()
            .map(
                all ->
                    all
                        ? "the gun gets there in every position of the swing"
                        : "the gun does not get there in every position of the swing")
            .orElse("");
    return "Grease fitting "
        + grease.feature()
        + ": "
        + String.join(
            "; ", java.util.stream.Stream.of(drilled, seam, gun).filter(s -> !s.isEmpty()).toList())
        + ".";
  }
}
