package org.counterpull.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A kind of quantity: its units (the first is the canonical one, in which the program carries it),
 * the magnitudes beyond which a value is taken for a slip of the pen, and an example.
 */
public enum Dimension {
  LENGTH("length", -1e6, 1e6, "12 mm, 1/2 in or 1-1/4 in", lengths()),
  TEMPERATURE(
      "temperature",
      -273.15,
      6000,
      "150 C or 300 F",
      Unit.of("C", 1, "degc", "celsius"),
      Unit.scale("F", 5.0 / 9, -160.0 / 9, "degf", "fahrenheit"),
      Unit.scale("K", 1, -273.15, "kelvin")),
  TEMPERATURE_DIFFERENCE(
      "temperature difference",
      -6000,
      6000,
      "50 K",
      Unit.of("K", 1, "kelvin", "c", "degc"),
      Unit.of("F", 5.0 / 9, "degf")),
  SPEED(
      "speed",
      0,
      1e4,
      "5 mm/s or 12 in/min",
      Unit.of("mm/s", 1),
      Unit.of("mm/min", 1.0 / 60),
      Unit.of("cm/min", 10.0 / 60),
      Unit.of("m/min", 1000.0 / 60),
      Unit.of("in/min", 25.4 / 60, "ipm"),
      Unit.of("m/s", 1000)),
  FORCE("force", 0, 1e9, "8 kN", Unit.of("N", 1), Unit.of("kN", 1e3), Unit.of("lbf", 4.4482216)),
  CURRENT("current", 0, 5000, "120 A", Unit.of("A", 1, "amp", "amps")),
  VOLTAGE("voltage", 0, 1e4, "230 V", Unit.of("V", 1, "volt", "volts"), Unit.of("kV", 1e3)),
  PERCENT("percentage", 0, 1000, "20 %", Unit.of("%", 1, "percent", "pct")),
  POWER("power", 0, 1e7, "4.8 kW", Unit.of("W", 1), Unit.of("kW", 1e3), Unit.of("kVA", 1e3)),
  PRESSURE(
      "pressure",
      0,
      1e5,
      "210 bar or 3000 psi",
      Unit.of("MPa", 1, "n/mm2"),
      Unit.of("bar", 0.1),
      Unit.of("psi", 0.006894757),
      Unit.of("ksi", 6.894757),
      Unit.of("GPa", 1e3),
      Unit.of("kPa", 1e-3)),
  TIME(
      "time",
      0,
      1e8,
      "90 s or 5 min",
      Unit.of("s", 1, "sec", "second", "seconds"),
      Unit.of("min", 60, "minute", "minutes"),
      Unit.of("h", 3600, "hour", "hours", "hr")),
  ANGLE(
      "angle",
      -36000,
      36000,
      "30 deg",
      Unit.of("deg", 1, "degree", "degrees"),
      Unit.of("rad", 180 / Math.PI)),
  GAS_FLOW(
      "gas flow",
      0,
      1000,
      "12 l/min or 25 cfh",
      Unit.of("l/min", 1, "lpm"),
      Unit.of("cfh", 28.316846592 / 60, "ft3/h")),
  MASS("mass", 0, 1e9, "2.5 kg", Unit.of("kg", 1), Unit.of("g", 1e-3), Unit.of("lb", 0.45359237)),
  HEAT_PER_LENGTH(
      "heat per length",
      0,
      1e3,
      "0.8 kJ/mm",
      Unit.of("kJ/mm", 1),
      Unit.of("J/mm", 1e-3),
      Unit.of("kJ/cm", 0.1),
      Unit.of("kJ/in", 1 / 25.4),
      Unit.of("J/in", 1e-3 / 25.4)),
  CONDUCTIVITY(
      "conductivity",
      0,
      10,
      "0.028 W/mmK or 28 W/mK",
      Unit.of("W/mmK", 1, "w/(mmk)", "w/mm/k"),
      Unit.of("W/mK", 1e-3, "w/(mk)", "w/m/k")),
  HEAT_CAPACITY(
      "heat capacity by volume",
      0,
      1,
      "0.0044 J/mm3K",
      Unit.of("J/mm3K", 1, "j/(mm3k)", "j/mm3/k"),
      Unit.of("J/m3K", 1e-9),
      Unit.of("MJ/m3K", 1e-3)),
  FILM_COEFFICIENT(
      "film coefficient",
      0,
      1e6,
      "20 W/m2K",
      Unit.of("W/m2K", 1, "w/(m2k)", "w/m2/k"),
      Unit.of("W/mm2K", 1e6)),
  HYDROGEN("diffusible hydrogen", 0, 1000, "5 ml/100 g", Unit.of("ml/100 g", 1)),
  AREA("area", 0, 1e12, "300 mm2", Unit.of("mm2", 1), Unit.of("cm2", 100), Unit.of("in2", 645.16)),
  SECOND_MOMENT(
      "second moment of area",
      0,
      1e18,
      "1.2e6 mm4",
      Unit.of("mm4", 1),
      Unit.of("cm4", 1e4),
      Unit.of("in4", 25.4 * 25.4 * 25.4 * 25.4)),
  RESTRAINT(
      "restraint",
      0,
      1e6,
      "5 kgf/mm2/mm",
      Unit.of("kgf/mm2/mm", 1),
      Unit.of("N/mm2/mm", 1 / 9.80665)),
  RATIO("ratio", -1e6, 1e6, "0.8", Unit.of("1", 1), Unit.of("%", 0.01, "percent"));

  private final String words;
  private final double low;
  private final double high;
  private final String example;
  private final List<Unit> units;

  Dimension(String words, double low, double high, String example, Unit... units) {
    this.words = words;
    this.low = low;
    this.high = high;
    this.example = example;
    this.units = List.of(units);
  }

  /** The kind in words. */
  public String words() {
    return words;
  }

  /** Values as a person would write them. */
  public String example() {
    return example;
  }

  /** The unit in which the program carries this quantity. */
  public String canonicalUnit() {
    return units.get(0).symbol();
  }

  /** Symbols of all units understood, the canonical one first. */
  public List<String> unitSymbols() {
    return units.stream().map(Unit::symbol).toList();
  }

  /** Least plausible value in the canonical unit. */
  public double low() {
    return low;
  }

  /** Greatest plausible value in the canonical unit. */
  public double high() {
    return high;
  }

  /** The first dimension that has a unit of this symbol, in the order of declaration. */
  public static Optional<Dimension> ofUnit(String symbol) {
    for (Dimension dimension : values()) {
      if (dimension.find(symbol).isPresent()) {
        return Optional.of(dimension);
      }
    }
    return Optional.empty();
  }

  /**
   * Converts between two units of this dimension.
   *
   * @throws IllegalArgumentException when either unit isn't one of this dimension
   */
  public double convert(double value, String fromUnit, String toUnit) {
    if (fromUnit.equals(toUnit)) {
      return value;
    }
    return known(toUnit).fromCanonical(known(fromUnit).toCanonical(value));
  }

  Optional<Unit> find(String word) {
    String plain = Unit.plain(word);
    return units.stream().filter(u -> u.isWritten(plain)).findFirst();
  }

  Unit known(String symbol) {
    return find(symbol)
        .orElseThrow(() -> new IllegalArgumentException(symbol + " is no unit of " + words));
  }

  private static Unit[] lengths() {
    List<Unit> units = new ArrayList<>();
    for (LengthUnit unit : LengthUnit.values()) {
      String[] other =
          switch (unit) {
            case MM, CM, M -> new String[0];
            case IN -> new String[] {"\"", "inch", "inches"};
            case FT -> new String[] {"'", "foot", "feet"};
          };
      units.add(Unit.of(unit.symbol(), unit.mm(), other));
    }
    return units.toArray(new Unit[0]);
  }
}
