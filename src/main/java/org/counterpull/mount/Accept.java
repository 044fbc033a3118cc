package org.counterpull.mount;

/**
 * What a moved bore means: up to a third of its band it is gauged and used, up to the band honed,
 * up to 0.18 mm bored to the next size, beyond that rejected. Derived from tolerance logic; the
 * 0.18 mm is common practice, no source.
 */
public enum Accept {
  GAUGE("gauge it and use it", Outcome.FITS),
  HONE("hone it, gauge it again, new seals", Outcome.FITS_IF),
  NEXT_SIZE("bore and hone to the next size, or reject", Outcome.DONT),
  REJECT("reject", Outcome.DONT);

  private final String words;
  private final Outcome outcome;

  Accept(String words, Outcome outcome) {
    this.words = words;
    this.outcome = outcome;
  }

  /** The words used in outputs. */
  public String words() {
    return words;
  }

  /** The words for a bore that is only to leave clearance. */
  String ofClearance() {
    return switch (this) {
      case GAUGE -> "try what turns in it and use it";
      case HONE -> "try what turns in it, ream where it is tight";
      case NEXT_SIZE, REJECT -> "what turns in it will not go in: ream it or leave more clearance";
    };
  }

  Outcome outcome() {
    return outcome;
  }

  /** By the central value; good without more only where the upper end of the band is good too. */
  static Accept of(Span changeMm, double bandMm) {
    double third = ShopValue.of("accept up to band share") * bandMm;
    double reject = Math.max(bandMm, ShopValue.of("reject above"));
    if (changeMm.high() <= third) {
      return GAUGE;
    }
    if (changeMm.value() <= bandMm) {
      return HONE;
    }
    return changeMm.value() <= reject ? NEXT_SIZE : REJECT;
  }
}
