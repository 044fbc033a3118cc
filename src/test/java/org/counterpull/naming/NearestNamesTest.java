package org.counterpull.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestNamesTest {
  private static final List<String> KNOWN = List.of("flat", "plate", "angle", "round bar", "bar");

  @Test
  void slipsOfTheFinger() {
    assertThat(NearestNames.of("flta", KNOWN)).containsExactly("flat");
    assertThat(NearestNames.of("Plat", KNOWN)).containsExactly("plate", "flat");
    assertThat(NearestNames.of("angel", KNOWN)).containsExactly("angle");
    assertThat(NearestNames.of("round", KNOWN)).containsExactly("round bar");
    assertThat(NearestNames.of("hexagon", KNOWN)).isEmpty();
    assertThat(NearestNames.of(" ", KNOWN)).isEmpty();
  }

  @Test
  void keystrokesAreCountedBothWays() {
    assertThat(NearestNames.keystrokes("ab", "ba")).isEqualTo(1);
    assertThat(NearestNames.keystrokes("kitten", "sitting")).isEqualTo(3);
    assertThat(NearestNames.keystrokes("", "abc")).isEqualTo(3);
  }
}
