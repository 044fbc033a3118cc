package org.counterpull.position;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Positions of plate welds by ISO 6947 (from memory), with the direction of vertical ones. */
public enum WeldingPosition {
  PA("flat"),
  PB("horizontal-vertical fillet"),
  PC("horizontal"),
  PD("horizontal overhead fillet"),
  PE("overhead"),
  PF("vertical-up"),
  PG("vertical-down");

  private final String meaning;

  WeldingPosition(String meaning) {
    this.meaning = meaning;
  }

  /** The position in words. */
  public String meaning() {
    return meaning;
  }

  /** Flat or horizontal: the pool lies on the work. */
  public boolean isFlatOrHorizontal() {
    return switch (this) {
      case PA, PB, PC -> true;
      case PD, PE, PF, PG -> false;
    };
  }

  /** Overhead: the pool hangs. */
  public boolean isOverhead() {
    return switch (this) {
      case PD, PE -> true;
      case PA, PB, PC, PF, PG -> false;
    };
  }

  /** The position by its two letters; case doesn't matter. */
  public static Optional<WeldingPosition> parse(String text) {
    String wanted = text.strip().toUpperCase(Locale.ROOT);
    return Arrays.stream(values()).filter(p -> p.name().equals(wanted)).findFirst();
  }
}
