package org.counterpull.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

  /** 25.4 mm to the inch, 304.8 mm to the foot: exact by definition. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12 | 12",
        "12 mm | 12",
        "12mm | 12",
        "-3.5 mm | -3.5",
        "1/2 in | 12.7",
        "1/2in | 12.7",
        "0.080 in | 2.032",
        ".5 in | 12.7",
        "1-1/4 in | 31.75",
        "1 1/4\" | 31.75",
        "1¼ in | 31.75",
        "½ inch | 12.7",
        "2.5 cm | 25",
        "1.2 m | 1200",
        "3 ft | 914.4",
        "3 ft 6 in | 1066.8",
        "3' 6-1/2\" | 1079.5",
        "3'-6\" | 1066.8",
        "-1 ft 6 in | -457.2",
        "1e3 mm | 1000",
        "12 MM | 12"
      })
  void lengthsAsAShopWritesThem(String text, double mm) {
    assertThat(QuantityParser.parseLengthMm(text, LengthUnit.MM)).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1, 25.4", "1/2, 12.7", "1-1/4, 31.75", "10 mm, 10", "0.25, 6.35"})
  void aBareNumberIsInTheFilesUnit(String text, double mm) {
    assertThat(QuantityParser.parseLengthMm(text, LengthUnit.IN)).isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TEMPERATURE | 300 F | C | 148.888889",
        "TEMPERATURE | 32 °F | C | 0",
        "TEMPERATURE | 293.15 K | C | 20",
        "TEMPERATURE | -40 F | C | -40",
        "TEMPERATURE | 20 | C | 20",
        "TEMPERATURE_DIFFERENCE | 90 F | K | 50",
        "SPEED | 12 in/min | mm/s | 5.08",
        "SPEED | 12 ipm | mm/s | 5.08",
        "SPEED | 30 cm/min | mm/s | 5",
        "SPEED | 300 mm/min | mm/s | 5",
        "SPEED | 6 m/min | mm/s | 100",
        "FORCE | 8 kN | N | 8000",
        "FORCE | 100 lbf | N | 444.82216",
        "CURRENT | 120 A | A | 120",
        "VOLTAGE | 230 V | V | 230",
        "PERCENT | 20% | % | 20",
        "POWER | 4.8 kW | W | 4800",
        "PRESSURE | 210 bar | MPa | 21",
        "PRESSURE | 3000 psi | MPa | 20.684271",
        "TIME | 5 min | s | 300",
        "TIME | 1.5 h | s | 5400",
        "ANGLE | 3.14159265358979 rad | deg | 180",
        "GAS_FLOW | 25 cfh | l/min | 11.798686",
        "MASS | 10 lb | kg | 4.5359237",
        "HEAT_PER_LENGTH | 960 J/mm | kJ/mm | 0.96",
        "HEAT_PER_LENGTH | 1 kJ/in | kJ/mm | 0.03937008",
        "HEAT_PER_LENGTH | 1.2 kJ/mm | J/mm | 1200",
        "CONDUCTIVITY | 28 W/mK | W/mmK | 0.028",
        "HEAT_CAPACITY | 4.4 MJ/m3K | J/mm3K | 0.0044",
        "HYDROGEN | 5 ml/100 g | ml/100 g | 5",
        "RATIO | 80 % | 1 | 0.8"
      })
  void otherQuantities(Dimension dimension, String text, String unit, double value) {
    assertThat(QuantityParser.parse(dimension, text, unit)).isCloseTo(value, within(1e-6));
  }

  @Test
  void typedParsersUseTheCanonicalUnit() {
    assertThat(QuantityParser.parseTemperatureC("212 F")).isCloseTo(100, within(1e-9));
    assertThat(QuantityParser.parseTemperatureDifferenceK("18 F")).isCloseTo(10, within(1e-9));
    assertThat(QuantityParser.parseSpeedMmPerS("5")).isEqualTo(5);
    assertThat(QuantityParser.parseForceN("1 kN")).isEqualTo(1000);
    assertThat(QuantityParser.parseCurrentA("90 A")).isEqualTo(90);
    assertThat(QuantityParser.parseVoltageV("120")).isEqualTo(120);
    assertThat(QuantityParser.parsePercent("20 %")).isEqualTo(20);
    assertThat(QuantityParser.parsePowerW("3 kW")).isEqualTo(3000);
    assertThat(QuantityParser.parsePressureMPa("10 bar")).isEqualTo(1);
    assertThat(QuantityParser.parseTimeS("2 min")).isEqualTo(120);
    assertThat(QuantityParser.parseAngleDeg("45 deg")).isEqualTo(45);
    assertThat(QuantityParser.parseGasFlowLPerMin("12 l/min")).isEqualTo(12);
    assertThat(QuantityParser.parseMassKg("500 g")).isEqualTo(0.5);
    assertThat(QuantityParser.parseHeatKJPerMm("0.8")).isEqualTo(0.8);
  }

  @Test
  void anUnknownUnitIsNamedWithTheUnitsAllowed() {
    QuantityException e =
        catchThrowableOfType(
            QuantityException.class, () -> QuantityParser.parseLengthMm("12 mn", LengthUnit.MM));
    assertThat(e.problem()).isEqualTo("\"mn\" in \"12 mn\" is no unit of length");
    assertThat(e.tryThis()).isEqualTo("12 mm, 1/2 in or 1-1/4 in (units: mm, cm, m, in, ft)");
    assertThat(e.getMessage()).isEqualTo(e.problem() + ". Try: " + e.tryThis());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "NaN | \"NaN\" is no length: it has no number in front",
        ".nan | \".nan\" is no length: it has no number in front",
        "inf | \"inf\" is no length: it has no number in front",
        "thick | \"thick\" is no length: it has no number in front",
        "mm 12 | \"mm 12\" is no length: it has no number in front",
        "1e999 | \"1e999\" is not a finite number",
        "1/0 in | \"1/0 in\" is not a finite number",
        "12,5 mm | \"12,5 mm\" has a comma",
        "2e6 mm | \"2e6 mm\" is no plausible length: it must lie from -1000000 to 1000000 mm",
        "12 C | \"C\" in \"12 C\" is no unit of length",
        "12 mm 3 | \"mm 3\" in \"12 mm 3\" is no unit of length",
        "1.5/2 in | \"/2 in\" in \"1.5/2 in\" is no unit of length",
        "3 ft 14 in | \"3 ft 14 in\" has a foot or more of inches behind the feet",
        "2.5 ft 6 in | \"2.5 ft 6 in\" is no length in feet and inches",
        "3 ft 20 mm | \"3 ft 20 mm\" is no length in feet and inches"
      })
  void badLengths(String text, String problem) {
    assertThatThrownBy(() -> QuantityParser.parseLengthMm(text, LengthUnit.MM))
        .isInstanceOfSatisfying(
            QuantityException.class, e -> assertThat(e.problem()).isEqualTo(problem));
  }

  @Test
  void zeroOverZeroIsNoNumber() {
    assertThatThrownBy(() -> QuantityParser.parseLengthMm("0/0", LengthUnit.MM))
        .isInstanceOf(QuantityException.class);
  }

  @Test
  void missingAndOverlongTexts() {
    assertThatThrownBy(() -> QuantityParser.parseLengthMm("  ", LengthUnit.MM))
        .hasMessageStartingWith("a length is missing. Try: 12 mm");
    assertThatThrownBy(() -> QuantityParser.parseLengthMm("1".repeat(5000), LengthUnit.MM))
        .hasMessageContaining("is too long for a length");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-5 mm", "0/4 in"})
  void aSizeIsGreaterThanZero(String text) {
    assertThatThrownBy(() -> QuantityParser.parseSizeMm(text, LengthUnit.IN))
        .hasMessage("\"" + text + "\" is not greater than zero. Try: a size such as 1/2 in");
  }

  @Test
  void impossibleValuesOfOtherKinds() {
    assertThatThrownBy(() -> QuantityParser.parseTemperatureC("-300 C"))
        .hasMessage(
            "\"-300 C\" is no plausible temperature: it must lie from -273.15 to 6000 C."
                + " Try: a value such as 150 C or 300 F");
    assertThatThrownBy(() -> QuantityParser.parseSpeedMmPerS("-5 mm/s"))
        .isInstanceOf(QuantityException.class);
    assertThatThrownBy(() -> QuantityParser.parseCurrentA("120 V"))
        .hasMessage("\"V\" in \"120 V\" is no unit of current. Try: 120 A (units: A)");
  }

  /** Property: what is written in a unit comes back when converted back to it. */
  @ParameterizedTest
  @EnumSource(Dimension.class)
  void everyUnitRoundTrips(Dimension dimension) {
    Random random = new Random(7);
    for (String unit : dimension.unitSymbols()) {
      for (int i = 0; i < 40; i++) {
        double value =
            dimension.convert(
                dimension.low() + random.nextDouble() * (dimension.high() - dimension.low()),
                dimension.canonicalUnit(),
                unit);
        String text = String.format(Locale.ROOT, "%.9e %s", value, unit);
        double back = QuantityParser.parse(dimension, text, unit);
        assertThat(back).isCloseTo(value, within(Math.abs(value) * 1e-8 + 1e-9));
      }
    }
  }

  /** Property: n sixteenths, written as a mixed number, are n * 1.5875 mm. */
  @Test
  void sixteenthsOfAnInch() {
    for (int n = 1; n < 200; n++) {
      String text = n < 16 ? n + "/16 in" : n / 16 + "-" + n % 16 + "/16 in";
      assertThat(QuantityParser.parseLengthMm(text, LengthUnit.MM))
          .isCloseTo(n * 1.5875, within(1e-9));
    }
  }

  /** Spelling ignores case, so two units of one dimension must not differ by case alone. */
  @ParameterizedTest
  @EnumSource(Dimension.class)
  void noWordMeansTwoUnits(Dimension dimension) {
    Set<String> seen = new HashSet<>();
    for (String symbol : dimension.unitSymbols()) {
      for (String word : dimension.known(symbol).words()) {
        assertThat(seen.add(word)).as(word).isTrue();
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void everyExampleIsUnderstood(Dimension dimension) {
    for (String example : dimension.example().split(" or |, ")) {
      assertThat(QuantityParser.parse(dimension, example, dimension.canonicalUnit())).isPositive();
    }
  }

  @Test
  void dimensionsAreFoundByUnit() {
    assertThat(Dimension.ofUnit("kJ/mm")).contains(Dimension.HEAT_PER_LENGTH);
    assertThat(Dimension.ofUnit("C")).contains(Dimension.TEMPERATURE);
    assertThat(Dimension.ofUnit("furlong")).isEmpty();
  }
}
