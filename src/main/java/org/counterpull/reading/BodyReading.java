package org.counterpull.reading;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.stock.Plate;
import org.counterpull.stock.Stock;

/** Reads what a part is cut from and how long it is. */
final class BodyReading {
  private static final double SAME_LENGTH_MM = 0.5;

  private BodyReading() {}

  static Optional<PartDraft.Body> read(Fields fields) {
    Optional<Stock> stock =
        fields.get("stock").flatMap(v -> v.parsed(t -> Stock.parse(t, v.unit())));
    Optional<List<Vector2D>> outline = fields.get("outline").flatMap(Outlines::read);
    Optional<Double> width = fields.size("width");
    boolean isPlate = stock.isPresent() && stock.get() instanceof Plate;
    if (stock.isPresent() && !isPlate) {
      fields.refuse(
          List.of("width", "outline"),
          stock.get().describe() + " has its width in the stock",
          "leave it out, or stock: plate THICKNESS");
    }
    if (fields.has("outline")) {
      fields.refuse(List.of("width", "length"), "the outline says it", "leave it out");
      return stock.filter(s -> isPlate).flatMap(s -> outline.map(o -> outlined((Plate) s, o)));
    }
    Optional<Double> length = length(fields);
    Optional<Stock> cut = stock.flatMap(s -> s instanceof Plate p ? cut(fields, p, width) : stock);
    return cut.flatMap(s -> length.map(l -> new PartDraft.Body(s, l, List.of())));
  }

  private static PartDraft.Body outlined(Plate plate, List<Vector2D> corners) {
    Vector2D extent = Outlines.extent(corners);
    return new PartDraft.Body(
        plate.withWidth(extent.getY()), extent.getX(), Outlines.aboutMiddle(corners));
  }

  private static Optional<Stock> cut(Fields fields, Plate plate, Optional<Double> width) {
    if (width.isPresent()) {
      return Optional.of(plate.withWidth(width.get()));
    }
    if (plate.widthMm().isPresent()) {
      return Optional.of(plate);
    }
    if (fields.has("width") || fields.has("like")) {
      return Optional.empty();
    }
    return fields.problem(
        "a plate needs a width, or an outline",
        "width: 120, or outline: [[0, 0], [80, 0], [0, 60]]");
  }

  private static Optional<Double> length(Fields fields) {
    Optional<Double> given = fields.size("length");
    Optional<Vector3D> from = fields.get("axis from").flatMap(Value::point);
    Optional<Vector3D> to = fields.get("axis to").flatMap(Value::point);
    if (from.isPresent() && to.isPresent()) {
      double distance = from.get().distance(to.get());
      if (given.isPresent() && Math.abs(given.get() - distance) > SAME_LENGTH_MM) {
        return fields.problem(
            "length",
            String.format(
                Locale.ROOT,
                "the length is %.1f mm, but from axis from to axis to it is %.1f mm",
                given.get(),
                distance),
            "leave the length out, or move one of the points");
      }
      return distance >= Value.LEAST_SIZE_MM
          ? Optional.of(distance)
          : fields.problem("axis to", "the two points are the same", "[300, 0, 400]");
    }
    boolean expected = fields.has("length") || fields.has("axis from") || fields.has("axis to");
    return expected || fields.has("like")
        ? given
        : fields.problem("length is missing: along the part, at its longest", "length: 900");
  }
}
