package org.counterpull.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.OwnRule;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;

/** Swings, cylinders, own rules, states of a vessel and return clamps, as the file says them. */
class MotionReadingTest {
  private static Weldment read() {
    Path file = Path.of("src/test/resources/good/swing-and-rules.yaml");
    return ((ReadResult.Read) WeldmentReader.read(file)).weldment();
  }

  @Test
  void aSwingWithItsCylinder() {
    Swing swing = read().swings().get(0);
    assertThat(swing.moving()).containsExactly("tab");
    assertThat(swing.fromDeg()).isEqualTo(-10);
    assertThat(swing.toDeg()).isEqualTo(95);
    Swing.Cylinder cylinder = swing.cylinder().orElseThrow();
    assertThat(cylinder.fixedAt().getZ()).isEqualTo(-300);
    // A bare pressure is in bar: 160 bar = 16 MPa.
    assertThat(cylinder.pressureMPa()).isCloseTo(16, within(1e-9));
    // Left out: 5 mm.
    assertThat(cylinder.reserveMm()).isEqualTo(5);
  }

  @Test
  void rulesOfItsOwn() {
    assertThat(read().rules())
        .containsExactly(
            new OwnRule(
                "chips",
                "ream",
                "unmask",
                "all",
                "chips get under the plug.",
                true,
                "the shop's own"),
            new OwnRule(
                "wash",
                "measure cold",
                "paint",
                "all",
                "the gauge leaves oil.",
                false,
                "our handbook"));
  }

  @Test
  void whatWasDoneToAVesselAndWhereTheReturnLeadSits() {
    assertThat(read().features().get(0).states()).containsExactlyInAnyOrder(Feature.State.values());
    assertThat(read().fixtures())
        .extracting(Fixture::kind)
        .isEqualTo(List.of(Fixture.Kind.RETURN_CLAMP));
  }
}
