package org.counterpull.order;

import org.counterpull.weldment.Fixture;

/** Fitting and taking off of fixtures. */
final class FixtureSteps {
  private FixtureSteps() {}

  static void add(Steps all) {
    for (Fixture fixture : all.weldment().fixtures()) {
      switch (fixture.kind()) {
        case TABLE, SUPPORT ->
            add(all, StepTag.SUPPORT, fixture, "Level " + fixture.kind().words() + ": ");
        case THROUGH_ROD -> {
          String size = fixture.diameterMm().map(d -> " of " + Steps.mm(d) + " mm").orElse("");
          add(all, StepTag.THROUGH_ROD, fixture, "Put a rod" + size + " through: ");
          add(all, StepTag.REMOVE_ROD, fixture, "Draw out by hand: ");
        }
        case CLAMP, STRONGBACK, SPACER -> {
          add(all, StepTag.FIXTURE, fixture, "Fit " + fixture.kind().words() + ": ");
          add(all, StepTag.RELEASE, fixture, "Take off " + fixture.kind().words() + ": ");
        }
      }
    }
  }

  private static void add(Steps all, StepTag tag, Fixture fixture, String what) {
    int turn = fixture.parts().stream().mapToInt(all.fitOrder()::of).max().orElse(0);
    all.add(
        new Steps.Draft(tag, fixture.name(), what + fixture.name(), fixture.name())
            .parts(fixture.parts())
            .subject(fixture.name())
            .turn(turn));
  }
}
