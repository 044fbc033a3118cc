package org.counterpull.steel;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;

/**
 * Temperature at which martensite begins to form: {@code 539 - 423 C - 30.4 Mn - 17.7 Ni - 12.1 Cr
 * - 7.5 Mo}, mass percent.
 *
 * <p><b>Source:</b> Andrews 1965. <b>Valid for:</b> low-alloy steels up to 0.6 % carbon; above it
 * answers with a warning.
 */
public final class MartensiteStart {
  public static final Formula FORMULA =
      new Formula("martensite-start", "martensite start temperature", "C", "Andrews 1965");

  private MartensiteStart() {}

  /** Martensite start, C. */
  public static Computed of(Composition s) {
    return FORMULA.result(
        539 - 423 * s.c() - 30.4 * s.mn() - 17.7 * s.ni() - 12.1 * s.cr() - 7.5 * s.mo(),
        new Limits().within("C", s.c(), 0, 0.6, "%").outside());
  }
}
