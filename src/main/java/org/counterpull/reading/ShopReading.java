package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.QuantityParser;
import org.counterpull.weldment.EdgeTool;
import org.counterpull.weldment.Prices;
import org.counterpull.weldment.StockRoom;
import org.counterpull.weldment.Surroundings;

/** Reads where the work is done and what things cost. */
final class ShopReading {
  private static final double ROOM_C = 20;
  private static final double DEAREST = 1e6;

  private ShopReading() {}

  static Surroundings surroundings(Fields file) {
    Notebook book = file.book();
    Optional<Fields> fields =
        file.get("surroundings").flatMap(v -> v.fields(ShopKeys.SURROUNDINGS));
    boolean silent = !file.has("surroundings");
    if (silent || fields.isPresent() && !fields.get().has("ambient")) {
      book.assume("surroundings.ambient", "20 C");
    }
    if (silent || fields.isPresent() && !fields.get().has("outdoors")) {
      book.assume("surroundings.outdoors", "false: no wind reaches the arc");
    }
    if (silent || fields.isPresent() && !fields.get().has("turning over")) {
      book.assume("surroundings.turning over", "true: the weldment can be turned over");
    }
    if (silent || fields.isPresent() && !fields.get().has("edge tools")) {
      book.assume("surroundings.edge tools", "weld edges are cut with a grinder");
    }
    List<EdgeTool> tools =
        fields
            .flatMap(f -> f.get("edge tools"))
            .flatMap(v -> v.all(item -> item.choice(Words.EDGE_TOOLS)))
            .filter(words -> !words.isEmpty())
            .map(words -> words.stream().distinct().map(Words::edgeTool).toList())
            .orElse(List.of(EdgeTool.GRINDER));
    Optional<Double> ambient =
        fields
            .flatMap(f -> f.get("ambient"))
            .flatMap(v -> v.quantity(QuantityParser::parseTemperatureC, -40, 60, "C"));
    Optional<Double> film =
        fields.flatMap(f -> f.get("film")).flatMap(v -> v.number(0, 10_000, "W/m2K"));
    return new Surroundings(
        ambient.orElse(ROOM_C),
        film,
        fields.map(f -> f.truth("outdoors", false)).orElse(false),
        fields.map(f -> f.truth("turning over", true)).orElse(true),
        tools);
  }

  static Optional<Prices> prices(Fields file) {
    return file.get("prices")
        .flatMap(v -> v.fields(ShopKeys.PRICES))
        .flatMap(
            f ->
                f.text("currency")
                    .map(
                        currency ->
                            new Prices(
                                currency,
                                price(f, "labour"),
                                price(f, "wire"),
                                price(f, "electrodes"),
                                price(f, "gas"),
                                price(f, "energy"),
                                price(f, "stock"))));
  }

  static StockRoom stockRoom(Fields file) {
    StockRoom usual = StockRoom.USUAL;
    Optional<Fields> fields = file.get("stock room").flatMap(v -> v.fields(ShopKeys.STOCK_ROOM));
    return fields
        .map(
            f ->
                new StockRoom(
                    f.get("bar").flatMap(v -> v.size(100, 30_000)).orElse(usual.barMm()),
                    f.get("kerf").flatMap(v -> v.size(0.1, 20)).orElse(usual.kerfMm())))
        .orElse(usual);
  }

  private static double price(Fields fields, String key) {
    if (!fields.has(key)) {
      fields.book().assume(fields.path(key), "0: no price is given");
    }
    return fields.get(key).flatMap(v -> v.number(0, DEAREST, "")).orElse(0.0);
  }
}
