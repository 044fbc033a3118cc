package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.counterpull.swing.SwingResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A nipple under a flap: the fixed bar comes before it when the flap folds under it. */
class GreaseInASwingTest {
  private static final Path FLAP = Path.of("src/test/resources/rules/flap.yaml");

  @TempDir Path folder;

  private SwingResult.Grease grease(int heightMm, int toDeg) throws IOException {
    String added =
        "features: {nipple: {on: flap, kind: grease fitting, at: [150, 30, %d], axis: z, diameter: 6}}\n"
            + "swings: {flap: {moves: flap, about: flap-barrel, to: %d deg}}";
    PlannedFile planned = PlannedFile.of(FLAP, added.formatted(heightMm, toDeg), folder);
    return planned.plan().practice().swings().get(0).grease().get(0);
  }

  /** The flap turns down to 140 degrees; its underside then looks up at the bar. */
  @Test
  void theGunIsStoppedByTheBarAtTheEndOfTheRange() throws IOException {
    SwingResult.Grease grease = grease(0, -140);
    assertThat(grease.reachedDeg()).contains(0.0);
    assertThat(grease.blockedDeg()).contains(-140.0);
    assertThat(grease.blockedBy()).contains("bar");
  }

  @Test
  void aFlapThatStaysAwayFromTheBarIsGreasedInEveryPosition() throws IOException {
    assertThat(grease(0, 40).blockedDeg()).isEmpty();
  }
}
