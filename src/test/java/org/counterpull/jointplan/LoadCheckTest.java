package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.counterpull.jointplan.LoadCheck.Way;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoadCheckTest {
  private static final String MACHINE =
      """
      machines:
        mag:
          process: mag
          current: 30..250 A
          duty: 40% at 250 A
          supply: 400 V 16 A three-phase
          wire: 1.0 mm G3Si1
          gas: Ar + 18 CO2
      """;

  @TempDir Path folder;

  /** A tab of 60 x 10 on a plate, S235, welded along both long sides. */
  private static String tab(String joint, String more) {
    return """
        weldment: tab
        units: mm
        steel: S235JR
        parts:
          plate: {stock: flat 120 x 12, length: 200, start: [0, 0, 0]}
          tab:
            stock: flat 60 x 10
            length: 80
            onto: plate
            face: top
            set: standing along
            at: middle
        """
        + "joints:\n  tab: {between: [tab, plate], weld: fillet, sides: [front, back], "
        + joint
        + "}\n"
        + more
        + MACHINE;
  }

  private LoadCheck check(String joint, String more) {
    return PlannedJoints.of(folder, tab(joint, more)).get(0).loadCheck().orElseThrow();
  }

  private static Way way(LoadCheck check, String direction) {
    return check.ways().stream()
        .filter(w -> w.direction().startsWith(direction))
        .findFirst()
        .orElseThrow();
  }

  // Worked lug, EN 1993-1-8: 60 long, leg 5 on both sides, a design load of 4 kN at 40 mm stand-off
  // in the tab's plane: 175.5 N/mm, used 0.239. The file holds the working load, 4/1.5 kN.
  @Test
  void theWorkedLugOnItsPin() {
    String pin =
        "features:\n  eye: {on: tab, kind: hole, at: [40, 30, 5], axis: z, diameter: 16.5,"
            + " turns on: pin 16}\n";
    LoadCheck check = check(String.format(Locale.ROOT, "leg: 5, load: %.6f kN", 4 / 1.5), pin);
    assertThat(check.at()).isEqualTo("on the pin of eye");
    assertThat(check.countedMm().value()).isCloseTo(2 * 52.93, within(0.01));
    Way along = way(check, "along");
    assertThat(1.5 * along.lineForce().value()).isCloseTo(175.5, within(0.05));
    assertThat(along.simplified().value()).isCloseTo(0.239, within(5e-4));
    // A pin carries nothing along itself: two directions are left.
    assertThat(check.ways()).hasSize(2);
    assertThat(check.standOffMm()).isEmpty();
    assertThat(check.shortfall()).isEmpty();
  }

  // EN 1993-1-8: straight out of the plane the directional method gains sqrt(1.5), along nothing.
  @Test
  void theDirectionalMethodGainsOutOfThePlane() {
    LoadCheck check = check("leg: 5, load: 20 kN", "");
    Way out = way(check, "out");
    assertThat(out.simplified().value() / out.directional().orElseThrow().value())
        .isCloseTo(Math.sqrt(1.5), within(1e-9));
    Way along = way(check, "along");
    assertThat(along.directional().orElseThrow().value())
        .isCloseTo(along.simplified().value(), within(1e-9));
  }

  @Test
  void overloadIsRefusedWithTheLegThatCarriesIt() {
    LoadCheck check = check("leg: 3, load: 40 kN", "");
    assertThat(check.utilisation().value()).isGreaterThan(1);
    assertThat(check.shortfall().orElseThrow()).contains("40 kN");
    double leg = check.leastLeg().orElseThrow().value();
    assertThat(check.remedy()).startsWith("a leg of ").contains("throat");
    LoadCheck again = check(String.format(Locale.ROOT, "leg: %.1f, load: 40 kN", leg), "");
    assertThat(again.shortfall()).isEmpty();
    assertThat(again.utilisation().value()).isBetween(0.8, 1.0);
    LoadCheck below = check(String.format(Locale.ROOT, "leg: %.1f, load: 40 kN", leg - 0.5), "");
    assertThat(below.utilisation().value()).isGreaterThan(1);
  }

  // Metal goes with the square of the leg: 10 against 5 is 300 % more.
  @Test
  void oversizeIsPointedOutWithWhatItCosts() {
    LoadCheck check = check("leg: 10, load: 1 kN", "");
    assertThat(check.remarks()).anyMatch(r -> r.contains("takes 300 % more metal"));
    assertThat(check("leg: 6, load: 1 kN", "").remarks()).noneMatch(r -> r.contains("more metal"));
  }

  @Test
  void withoutASizeMoreLoadNeverGivesASmallerWeld() {
    double before = 0;
    for (int kN = 5; kN <= 120; kN += 5) {
      JointPlan plan = PlannedJoints.of(folder, tab("load: " + kN + " kN", "")).get(0);
      double leg = plan.size().leg().orElseThrow().value();
      assertThat(leg).as(kN + " kN").isGreaterThanOrEqualTo(before);
      before = leg;
    }
    assertThat(before).isGreaterThan(5);
  }

  @Test
  void oneSideCarriesNoBendingAboutItself() {
    String oneSide =
        tab("leg: 5, load: 3 kN", "").replace("sides: [front, back]", "sides: [front]");
    LoadCheck check = PlannedJoints.of(folder, oneSide).get(0).loadCheck().orElseThrow();
    assertThat(check.shortfall()).isEmpty();
    assertThat(check.standOffMm().orElseThrow().value()).isZero();
    assertThat(check.remarks()).anyMatch(r -> r.contains("carries no bending about itself"));
    String onPin =
        oneSide.replace(
            "machines:",
            "features:\n  eye: {on: tab, kind: hole, at: [40, 30, 5], axis: x, diameter: 16.5,"
                + " turns on: pin 16}\nmachines:");
    LoadCheck bent = PlannedJoints.of(folder, onPin).get(0).loadCheck().orElseThrow();
    assertThat(bent.shortfall().orElseThrow()).contains("the root opens");
    assertThat(bent.remedy()).contains("other side");
  }

  @Test
  void weldsTooShortToCountAreRefused() {
    LoadCheck check =
        PlannedJoints.of(
                folder, tab("leg: 5, load: 1 kN", "").replace("flat 60 x 10", "flat 32 x 10"))
            .get(0)
            .loadCheck()
            .orElseThrow();
    assertThat(check.countedMm().value()).isZero();
    assertThat(check.shortfall().orElseThrow()).contains("long enough to count");
    assertThat(check.utilisation().value()).isFinite();
  }

  @Test
  void noStrengthIsGuessedForUnknownSteel() {
    JointPlan plan =
        PlannedJoints.of(
                folder, tab("leg: 5, load: 1 kN", "").replace("steel: S235JR", "steel: unknown"))
            .get(0);
    assertThat(plan.loadCheck()).isEqualTo(Optional.empty());
    assertThat(plan.notes()).anyMatch(n -> n.startsWith("its load is not checked"));
  }

  /**
   * AISC 360 J2.2b, from memory: a weld counts at its full leg from four legs on, a shorter one
   * with a quarter of its length for a leg. A block of 60 x 15 with leg 8 has two ends of 15 mm,
   * less than 32: they help by what a leg of 3.75 brings or are left out, and never make it worse.
   */
  @Test
  void endsShorterThanFourLegsNeverMakeItWorse() {
    LoadCheck with = stub("[front, back, left, right]");
    LoadCheck without = stub("[front, back]");
    for (Way way : with.ways()) {
      assertThat(way.allowable().value())
          .isLessThanOrEqualTo(way(without, way.direction()).allowable().value() + 1e-9);
    }
  }

  // AISC 360 J2.2b, from memory: four runs of 15 mm with leg 8 count with a leg of 15/4 = 3.75 mm.
  // By hand along the plate, through the middle: 5000 N over 60 mm is 83.33 N/mm; on the throat of
  // 3.75 x 0.7071 = 2.652 mm with 0.30 x 482.6 = 144.8 MPa that is 0.2170.
  @Test
  void onlyShortWeldsCountWithAQuarterOfTheirLength() {
    LoadCheck check = stub("[front, back, left, right]", "flat 15 x 15");
    assertThat(way(check, "along").allowable().value()).isCloseTo(0.2170, within(5e-4));
  }

  // EN 1993-1-8 4.11: a lap of 900 mm with a throat of 3.536 mm is 254.6 throats long: 1.2 - 0.2 x
  // 254.6/150 = 0.8606. The directional method takes it too.
  @Test
  void aLongLapCarriesLessInItsMiddle() {
    String lap =
        """
        weldment: strap
        units: mm
        steel: S235JR
        parts:
          plate: {stock: flat 200 x 12, length: 1200, start: [0, 0, 0]}
          strap: {stock: flat 60 x 10, length: %s, onto: plate, face: top, at: middle}
        joints:
          strap: {between: [strap, plate], weld: fillet, sides: [front, back], leg: 5, load: 10 kN}
        """;
    LoadCheck longOne =
        PlannedJoints.of(folder, String.format(lap, "900") + MACHINE)
            .get(0)
            .loadCheck()
            .orElseThrow();
    LoadCheck shortOne =
        PlannedJoints.of(folder, String.format(lap, "450") + MACHINE)
            .get(0)
            .loadCheck()
            .orElseThrow();
    double perLength =
        way(longOne, "along").simplified().value()
            * (900 - 2 * 3.536)
            / (way(shortOne, "along").simplified().value() * (450 - 2 * 3.536));
    assertThat(1 / perLength).isCloseTo(0.8606, within(2e-4));
  }

  // EN 1993-1-8 counts no throat under 3 mm: leg 4 has 2.83.
  @Test
  void aThinThroatUnderLoadIsPointedOut() {
    assertThat(check("leg: 4, load: 1 kN", "").remarks())
        .anyMatch(r -> r.contains("under the 3 mm"));
    assertThat(check("leg: 5, load: 1 kN", "").remarks()).noneMatch(r -> r.contains("under the 3"));
  }

  @Test
  void aSteelWithoutListedStrengthIsNeverSilentlyS235() {
    String bar = tab("leg: 5, load: 1 kN", "").replace("steel: S235JR", "steel: AISI 1018");
    assertThat(PlannedJoints.of(folder, bar).get(0).loadCheck().orElseThrow().remarks())
        .anyMatch(r -> r.startsWith("assumption: the strength of") && r.contains("S235"));
  }

  private LoadCheck stub(String sides) {
    return stub(sides, "flat 60 x 15");
  }

  private LoadCheck stub(String sides, String stock) {
    String file =
        tab("leg: 8, load: 5 kN", "")
            .replace("flat 60 x 10", stock)
            .replace("sides: [front, back]", "sides: " + sides);
    return PlannedJoints.of(folder, file).get(0).loadCheck().orElseThrow();
  }
}
