package org.counterpull.procedure;

import java.util.List;
import java.util.Optional;

/** Settings between two rows of one family, straight in thickness. */
final class Interpolation {
  private Interpolation() {}

  /**
   * Settings for a thickness between the ranges of two rows; empty where the rows differ in more
   * than thickness (electrode, gas, passes, no diameter in common).
   */
  static Optional<Found> between(Procedure thin, Procedure thick, double thicknessMm) {
    Optional<Range> diameter = thin.electrode().diameterMm().shared(thick.electrode().diameterMm());
    if (diameter.isEmpty() || !alike(thin, thick)) {
      return Optional.empty();
    }
    double from = thin.scope().thicknessMm().high();
    double share = (thicknessMm - from) / (thick.scope().thicknessMm().low() - from);
    Electrode electrode =
        new Electrode(
            thin.electrode().classification(), diameter.get(), thin.electrode().polarity());
    Procedure procedure =
        new Procedure(
            thin.id() + "~" + thick.id(),
            thin.family(),
            scope(thin.scope(), thick.scope(), thicknessMm, share),
            electrode,
            thin.shielding(),
            settings(thin.settings(), thick.settings(), share),
            thin.passes(),
            "interpolated between " + thin.id() + " and " + thick.id() + "; " + thin.source(),
            thin.note());
    return Optional.of(new Found(procedure, List.of(thin.id(), thick.id())));
  }

  private static boolean alike(Procedure thin, Procedure thick) {
    return thin.scope().sameWork(thick.scope())
        && thin.passes() == thick.passes()
        && thin.electrode().classification().equals(thick.electrode().classification())
        && thin.electrode().polarity() == thick.electrode().polarity()
        && thin.shielding().map(Shielding::gas).equals(thick.shielding().map(Shielding::gas));
  }

  private static Scope scope(Scope thin, Scope thick, double thicknessMm, double share) {
    return thin.withThickness(
        thicknessMm,
        towards(thin.legMm(), thick.legMm(), share),
        towards(thin.gapMm(), thick.gapMm(), share));
  }

  private static Settings settings(Settings thin, Settings thick, double share) {
    return new Settings(
        thin.currentA().towards(thick.currentA(), share),
        thin.voltageV().towards(thick.voltageV(), share),
        thin.travelMmPerS().towards(thick.travelMmPerS(), share),
        towards(thin.wireFeedMPerMin(), thick.wireFeedMPerMin(), share));
  }

  private static Optional<Range> towards(
      Optional<Range> thin, Optional<Range> thick, double share) {
    return thin.isPresent() && thick.isPresent()
        ? Optional.of(thin.get().towards(thick.get(), share))
        : Optional.empty();
  }
}
