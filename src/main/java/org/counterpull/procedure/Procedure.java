package org.counterpull.procedure;

import java.util.Optional;

/**
 * One row of starting settings.
 *
 * @param id stable name, unique in a book
 * @param family rows of one family differ in thickness only and may be interpolated
 * @param scope what it is for
 * @param electrode wire, rod or covered electrode
 * @param shielding gas, for processes that take one
 * @param settings current, voltage, travel, wire feed
 * @param passes number of passes
 * @param source what the row stands on
 * @param note what a welder must know besides
 */
public record Procedure(
    String id,
    String family,
    Scope scope,
    Electrode electrode,
    Optional<Shielding> shielding,
    Settings settings,
    int passes,
    String source,
    Optional<String> note) {
  public Procedure {
    if (id.isBlank() || family.isBlank() || source.isBlank()) {
      throw new IllegalArgumentException("a procedure needs an id, a family and a source");
    }
    if (passes < 1 || passes > 60) {
      throw new IllegalArgumentException("passes is " + passes + ": it must be 1 to 60");
    }
    boolean takesGas =
        switch (scope.process()) {
          case MAG, MIG, FCAW, TIG -> true;
          case MMA, FCAW_S -> false;
        };
    if (takesGas != shielding.isPresent()) {
      throw new IllegalArgumentException(
          scope.process().word() + (takesGas ? " needs a gas" : " takes no gas"));
    }
  }

  /** The row stands on no source that could be looked up. */
  public boolean isCommonPractice() {
    return source.startsWith("common practice");
  }

  /** Nothing that could be looked up stands behind the row, or only memory of it. */
  public boolean isUnproven() {
    return source.contains("common practice") || source.contains("from memory");
  }
}
