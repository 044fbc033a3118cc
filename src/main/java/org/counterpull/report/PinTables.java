package org.counterpull.report;

import static org.counterpull.report.Table.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.fit.AxisZone;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.PinRow.Bore;

/** Rows of bores in tables. */
final class PinTables {
  private final Measures measures;

  PinTables(Measures measures) {
    this.measures = measures;
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Each bore and how it comes out. */
  Table bores(PinRow row) {
    List<List<Shown>> rows = new ArrayList<>();
    int number = 0;
    for (Bore bore : row.bores()) {
      rows.add(
          row(
              ++number + " " + bore.part(),
              off(bore.left()),
              off(bore.right()),
              measures.fine(bore.tiltMm()),
              measures.fine(bore.closingMm()),
              measures.fine(bore.movedMm())));
    }
    return row.fit().zone().isEmpty()
        ? new Table(List.of(), List.of())
        : new Table(
            List.of(
                "bore",
                "left end off the line",
                "right end",
                "out of parallel over its length",
                "closes by up to",
                "moved from where it was fitted"),
            rows);
  }

  private Shown off(Optional<AxisZone.Off> end) {
    return end.map(e -> measures.fine(e.mm())).orElse(Shown.only(""));
  }

  /** What pin and plates carry; empty without a load. */
  Table uses(PinRow row) {
    List<List<Shown>> rows = new ArrayList<>();
    row.load()
        .ifPresent(
            load ->
                load.uses()
                    .forEach(
                        use ->
                            rows.add(
                                row(
                                    use.what(),
                                    amount(use.load(), use.unit()),
                                    amount(use.allowed(), use.unit()),
                                    text("%.0f %%", 100 * use.share())
                                        + (use.share() > 1 ? ", too weak" : ""),
                                    use.source()))));
    return new Table(
        List.of("what", "has to carry, or wants", "may carry, or has", "used", "source"), rows);
  }

  private Object amount(double value, String unit) {
    return switch (unit) {
      case "N" -> text("%.1f kN", value / 1000);
      case "N mm" -> text("%.0f N m", value / 1000);
      case "mm" -> measures.length(value);
      default -> text("%.2f", value);
    };
  }
}
