package org.counterpull.order;

import java.util.Collection;
import java.util.List;
import org.counterpull.weldment.Fixture;

/** Fitting and taking off of fixtures. */
final class FixtureSteps {
  private FixtureSteps() {}

  static void add(Steps all) {
    for (Fixture fixture : all.weldment().fixtures()) {
      switch (fixture.kind()) {
        case RETURN_CLAMP -> add(all, StepTag.RETURN_CLAMP, fixture, "Clamp the return lead on: ");
        case TABLE, SUPPORT ->
            add(all, StepTag.SUPPORT, fixture, "Level " + fixture.kind().words() + ": ");
        case THROUGH_ROD -> {
          String size = fixture.diameterMm().map(d -> " of " + Steps.mm(d) + " mm").orElse("");
          add(all, StepTag.THROUGH_ROD, fixture, "Put a rod" + size + " through: ");
          add(all, StepTag.REMOVE_ROD, fixture, "Draw out by hand: ", all.ways().ofRod(fixture));
        }
        case CLAMP, STRONGBACK, SPACER -> {
          add(all, StepTag.FIXTURE, fixture, "Fit " + fixture.kind().words() + ": ");
          add(all, StepTag.RELEASE, fixture, "Take off " + fixture.kind().words() + ": ");
        }
      }
    }
  }

  private static void add(Steps all, StepTag tag, Fixture fixture, String what) {
    add(all, tag, fixture, what, List.of());
  }

  private static void add(
      Steps all, StepTag tag, Fixture fixture, String what, Collection<String> inTheWay) {
    int turn = fixture.parts().stream().mapToInt(all.fitOrder()::of).max().orElse(0);
    all.add(
        new Steps.Draft(tag, fixture.name(), what + fixture.name(), fixture.name())
            .parts(fixture.parts())
            .subject(fixture.name())
            .why(WithRule.texts(tag, all.weldment(), fixture.parts()))
            .links(inTheWay.stream().map(Step::partLink).toList())
            .turn(turn));
  }
}
