package org.counterpull.mount;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What one way of fastening does, and what it takes.
 *
 * @param way which
 * @param outcome the verdict
 * @param heat temperatures; empty where no arc burns near the tube
 * @param bores what is moved
 * @param strength what is used by the load
 * @param parts extra parts with their dimensions
 * @param sleeve the sleeve; empty for none
 * @param passes laid on the tube or on what sits on it
 * @param minutes bench time, waits included, cooling after the last pass not
 * @param before what to do before the first arc
 * @param after what to do afterwards
 * @param deciding the figures that decide, in sentences
 */
public record WayAnswer(
    Way way,
    Outcome outcome,
    Optional<HeatFigures> heat,
    List<BoreFigure> bores,
    List<StrengthUse> strength,
    List<String> parts,
    Optional<Sleeve> sleeve,
    int passes,
    double minutes,
    List<String> before,
    List<String> after,
    List<String> deciding) {
  public WayAnswer {
    bores = List.copyOf(bores);
    strength = List.copyOf(strength);
    parts = List.copyOf(parts);
    before = List.copyOf(before);
    after = List.copyOf(after);
    deciding = List.copyOf(deciding);
  }

  /** The highest use of anything; empty without a load. */
  public Optional<StrengthUse> mostUsed() {
    return strength.stream().max(Comparator.comparingDouble(StrengthUse::use));
  }

  /** The bore that moves most; empty where none is near. */
  public Optional<BoreFigure> mostMoved() {
    return bores.stream().max(Comparator.comparingDouble(b -> b.movement().changeMm().value()));
  }
}
