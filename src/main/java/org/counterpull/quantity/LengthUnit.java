package org.counterpull.quantity;

/** The units of length that a file may declare for its bare numbers, and the others understood. */
public enum LengthUnit {
  MM("mm", 1),
  CM("cm", 10),
  M("m", 1000),
  /** The international inch of 1959, exact. */
  IN("in", 25.4),
  FT("ft", 304.8);

  private final String symbol;
  private final double mm;

  LengthUnit(String symbol, double mm) {
    this.symbol = symbol;
    this.mm = mm;
  }

  /** The unit as written after a number. */
  public String symbol() {
    return symbol;
  }

  /** Length of one of these in mm. */
  public double mm() {
    return mm;
  }

  /** Millimetres of a length in this unit. */
  public double toMm(double length) {
    return length * mm;
  }

  /** A length in this unit from millimetres. */
  public double fromMm(double lengthMm) {
    return lengthMm / mm;
  }
}
