package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is planned where the file leaves it open, and what is said of it. */
class UsualChoicesTest {
  private static final String TEE =
      """
      weldment: tee
      units: mm
      steel: S355J2
      parts:
        base: {stock: flat 200 x %1$d, length: 300, start: [0, 0, 0]}
        rib: {stock: flat 100 x %1$d, length: 100, onto: base, face: top, set: standing along, across: %2$s}
      joints:
        rib: {between: [rib, base], weld: fillet, leg: 5, sides: [%3$s]}
      machines:
        set: {process: %4$s, current: 20..200 A, duty: 60%% at 200 A, supply: 400 V 32 A three-phase%5$s}
      """;

  @TempDir Path folder;

  private String file(int t, String across, String sides, String process, String more) {
    return String.format(Locale.ROOT, TEE, t, across, sides, process, more);
  }

  private JointPlan plan(int t, String process, String more) {
    return PlannedJoints.of(folder, file(t, "middle", "front, back", process, more)).get(0);
  }

  // From memory: usual stock of cored wire is 1.2 mm, of small self-shielded wire 0.9 mm.
  @Test
  void coredWiresHaveDiametersOfTheirOwn() {
    assertThat(plan(8, "fcaw", "").filler().orElseThrow().diameterMm()).isEqualTo(1.2);
    assertThat(plan(6, "fcaw-s", "").filler().orElseThrow().diameterMm()).isEqualTo(0.9);
    Weldment weldment =
        PlannedJoints.read(folder, file(6, "middle", "front", "[fcaw-s, fcaw]", ""));
    assertThat(weldment.assumptions())
        .anyMatch(
            a ->
                a.what()
                    .equals("0.9 mm self-shielded wire is at hand, 1.2 mm cored wire is at hand"));
  }

  @Test
  void basicRodsAreTakenWhereRutileWouldAskForPreheat() {
    JointPlan free = plan(12, "mma", "");
    assertThat(free.filler().orElseThrow().designation()).contains("7018");
    assertThat(free.notes()).anyMatch(n -> n.startsWith("basic electrodes are planned"));
    JointPlan named = plan(12, "mma", ", electrodes: 3.2 mm E6013");
    assertThat(named.filler().orElseThrow().designation()).contains("E6013");
    assertThat(named.preheat().value()).isGreaterThan(free.preheat().value());
  }

  /** A tack brings less heat than a run, so it is never tacked colder than it is welded. */
  @Test
  void tacksAreAtLeastAsWarmAsRuns() {
    for (int t : new int[] {6, 10, 20, 30}) {
      JointPlan plan = plan(t, "mag", ", wire: 1.0 mm G3Si1, gas: Ar + 18 CO2");
      if (!plan.runs().isEmpty()) {
        assertThat(plan.steel().tackPreheat().orElseThrow().value())
            .isGreaterThanOrEqualTo(plan.preheat().value());
      }
    }
    JointPlan thick = plan(20, "mma", "");
    assertThat(thick.steel().tackPreheat().orElseThrow().value())
        .isGreaterThan(thick.preheat().value());
  }

  @Test
  void aFilletOnAFlushCornerIsRefusedInWords() {
    JointPlan plan =
        PlannedJoints.of(folder, file(8, "flush front", "front", "mag", ", wire: 1.0 mm G3Si1"))
            .get(0);
    assertThat(plan.runs()).isEmpty();
    assertThat(plan.refusals()).anyMatch(r -> r.contains("the parts are flush there"));
  }

  /** The side that closes the root of a double preparation comes first, and is the deeper one. */
  @Test
  void theDeeperSideIsWeldedFirst() {
    Weldment weldment =
        PlannedJoints.read(
            folder,
            """
            weldment: butt
            units: mm
            steel: S235JR
            parts:
              one: {stock: flat 100 x 15, length: 200, start: [0, 0, 0]}
              two: {stock: flat 100 x 15, length: 200, start: [200, 0, 0]}
            joints:
              seam: {between: [two, one], penetration: full, sides: [bottom, top]}
            machines:
              mag: {process: mag, current: 30..300 A, duty: 60% at 300 A, supply: 400 V 32 A three-phase, wire: 1.2 mm G3Si1, gas: Ar + 18 CO2}
            """);
    JointPlan plan = PlannedJoints.of(weldment).get(0);
    assertThat(plan.preparation().firstDepthMm()).isGreaterThan(plan.preparation().secondDepthMm());
    assertThat(plan.preparation().gouged()).isTrue();
    assertThat(plan.runs().get(0).passes().get(0).kind()).isEqualTo(PassPlan.Kind.ROOT);
    // Derived: 2/3 of 6 mm times the root face and 1 mm more is ground out and filled again.
    double gouged = 2.0 / 3 * 6 * (plan.preparation().rootFaceMm() + 1);
    PassPlan deepest = plan.runs().get(1).passes().get(0);
    assertThat(deepest.kind()).isIn(PassPlan.Kind.FILL, PassPlan.Kind.CAP, PassPlan.Kind.SINGLE);
    assertThat(deepest.area().value()).isGreaterThanOrEqualTo(gouged - 1e-9);
  }
}
