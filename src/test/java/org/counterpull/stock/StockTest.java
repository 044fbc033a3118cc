package org.counterpull.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.counterpull.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockTest {

  @Test
  void everyShapeIsRead() {
    assertThat(mm("flat 60 x 10")).isEqualTo(new Flat(60, 10));
    assertThat(mm("Flat bar 60x10")).isEqualTo(new Flat(60, 10));
    assertThat(mm("plate 8")).isEqualTo(new Plate(8));
    assertThat(mm("plate 300 x 8")).isEqualTo(new Plate(OptionalDouble.of(300), 8));
    assertThat(mm("angle 60 x 40 x 6")).isEqualTo(new Angle(60, 40, 6, 0));
    assertThat(mm("angle 50 x 50 x 6 radius 7")).isEqualTo(new Angle(50, 50, 6, 7));
    assertThat(mm("channel 100 x 50 x 5 x 8.5")).isEqualTo(new Channel(100, 50, 5, 8.5, 0));
    assertThat(mm("i-section 100 x 55 x 4.1 x 5.7 radius 7"))
        .isEqualTo(new ISection(100, 55, 4.1, 5.7, 7));
    assertThat(mm("square tube 50 x 3")).isEqualTo(new RectangularTube(50, 50, 3, 0));
    assertThat(mm("rectangular tube 60 × 40 × 4")).isEqualTo(new RectangularTube(60, 40, 4, 0));
    assertThat(mm("round bar 20")).isEqualTo(new RoundBar(20));
    assertThat(mm("square bar 12")).isEqualTo(new SquareBar(12));
    assertThat(mm("round tube 48.3 x 3.2")).isEqualTo(new RoundTube(48.3, 3.2));
  }

  @Test
  void unitsStandOnOneDimensionOrOnAll() {
    assertThat(mm("flat 1/2 x 2 in")).isEqualTo(new Flat(12.7, 50.8));
    assertThat(mm("flat 60 mm x 1/2 in")).isEqualTo(new Flat(60, 12.7));
    assertThat(Stock.parse("flat 2 x 1/2", LengthUnit.IN)).isEqualTo(new Flat(50.8, 12.7));
    assertThat(Stock.parse("flat 2 x 10 mm", LengthUnit.IN)).isEqualTo(new Flat(2, 10));
    assertThat(mm("flat 1-1/4 x 1/4\"")).isEqualTo(new Flat(31.75, 6.35));
    RoundTube tube = (RoundTube) mm("round tube 1.900 x 0.145 in");
    assertThat(tube.outsideMm()).isCloseTo(48.26, within(1e-9));
    assertThat(tube.wallMm()).isCloseTo(3.683, within(1e-9));
  }

  @Test
  void extentsFollowTheAxes() {
    assertThat(mm("flat 60 x 10").acrossMm()).isEqualTo(60);
    assertThat(mm("flat 60 x 10").upMm()).isEqualTo(10);
    assertThat(mm("angle 60 x 40 x 6").upMm()).isEqualTo(60);
    assertThat(mm("angle 60 x 40 x 6").acrossMm()).isEqualTo(40);
    assertThat(mm("rectangular tube 60 x 40 x 4").acrossMm()).isEqualTo(60);
    assertThat(mm("channel 100 x 50 x 5 x 8").upMm()).isEqualTo(100);
    assertThat(mm("channel 100 x 50 x 5 x 8").thinnestMm()).isEqualTo(5);
    assertThat(mm("channel 100 x 50 x 5 x 8").thickestMm()).isEqualTo(8);
    assertThat(((RoundTube) mm("round tube 48.3 x 3.2")).insideMm()).isCloseTo(41.9, within(1e-9));
  }

  @Test
  void aPlateHasAnAreaOnceItHasAWidth() {
    Plate plate = new Plate(8);
    assertThatThrownBy(plate::areaMm2)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("plate 8 has no width: cut it to one first");
    assertThat(plate.withWidth(300).areaMm2()).isEqualTo(2400);
    assertThat(plate.withWidth(300).describe()).isEqualTo("plate 300 x 8");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "flat 60 | flat takes 2 dimensions, \"flat 60\" has 1 | flat 60 x 10 (width x thickness)",
        "round bar 20 x 3 | round bar takes 1 dimension, \"round bar 20 x 3\" has 2 | round bar 20",
        "plate | plate takes 1 or 2 dimensions, \"plate\" has 0 | plate 8",
        "round tube 48.3 x 30 | round tube: two walls of 30 mm do not fit in an outside diameter of"
            + " 48.3 mm; write outside diameter x wall | round tube 48.3 x 3.2",
        "angle 50 x 50 x 60 | angle: the thickness of 60 mm must be less than the shorter leg of"
            + " 50 mm; write leg x leg x thickness | angle 50 x 50 x 6",
        "flta 60 x 10 | \"flta\" is no shape of stock | did you mean flat; such as flat 60 x 10",
        "hexagon 20 | \"hexagon\" is no shape of stock | one of flat, plate, angle, channel,"
            + " i-section, square tube, rectangular tube, round bar, square bar, round tube; such as"
            + " flat 60 x 10",
        "flat 60 x thick | \"thick\" is no length: it has no number in front (stock \"flat 60 x"
            + " thick\") | flat 60 x 10 (width x thickness)",
        "flat 60 x 10 kg | \"kg\" in \"10 kg\" is no unit of length (stock \"flat 60 x 10 kg\") |"
            + " flat 60 x 10 (width x thickness)",
        "flat 0 x 10 | flat: a dimension of 0 mm is not plausible for stock, which has 0.1 to"
            + " 20000 mm | flat 60 x 10",
        "flat 60 x -10 | flat: a dimension of -10 mm is not plausible for stock, which has 0.1 to"
            + " 20000 mm | flat 60 x 10",
        "flat 60 x 10 radius 2 | flat in \"flat 60 x 10 radius 2\" takes no radius | flat 60 x 10"
            + " (width x thickness)",
        "square tube 50 x 3 radius 30 | tube: a radius of 30 mm does not fit, at most 25 mm does |"
            + " rectangular tube 60 x 40 x 4"
      })
  void badStockSaysWhatToWrite(String text, String problem, String tryThis) {
    assertThatThrownBy(() -> mm(text))
        .isInstanceOfSatisfying(
            StockException.class,
            e -> {
              assertThat(e.problem()).isEqualTo(problem);
              assertThat(e.tryThis()).isEqualTo(tryThis);
            });
  }

  @Test
  void emptyAndEndlessTexts() {
    assertThatThrownBy(() -> mm(" ")).hasMessage("the stock is missing. Try: flat 60 x 10");
    assertThatThrownBy(() -> mm("flat " + "9".repeat(5000))).isInstanceOf(StockException.class);
  }

  /** Property: what a shape says of itself reads back as the same shape. */
  @Test
  void descriptionsReadBack() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double t = tenths(random, 2, 12);
      double a = tenths(random, 30, 200);
      double b = tenths(random, 30, 200);
      for (Stock stock :
          new Stock[] {
            new Flat(a, t),
            new Plate(t).withWidth(a),
            new Plate(t),
            new Angle(a, b, t, i % 2 == 0 ? 0 : t / 2),
            new Channel(a, b, t, t, 0),
            new ISection(a, b, t, t, t / 4),
            new RectangularTube(a, b, t, t),
            new RectangularTube(a, a, t, 0),
            new RoundBar(a),
            new SquareBar(a),
            new RoundTube(a, t)
          }) {
        assertThat(mm(stock.describe())).isEqualTo(stock);
      }
    }
  }

  private static double tenths(Random random, int low, int high) {
    return (low * 10 + random.nextInt((high - low) * 10)) / 10.0;
  }

  private static Stock mm(String text) {
    return Stock.parse(text, LengthUnit.MM);
  }
}
