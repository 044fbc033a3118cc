package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.counterpull.machine.Stretch;
import org.counterpull.quantity.Computed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SteelAndFillerTest {
  @TempDir static Path folder;

  private static final String MAG =
      "{process: mag, current: 40..250 A, duty: 40% at 250 A, supply: 400 V 16 A three-phase,"
          + " wire: 1.0 mm G3Si1}";

  /** A tee of two flats. */
  private static JointPlan tee(
      String steel, String other, double thickMm, String leg, String machine) {
    String yaml =
        "weldment: tee\nsteel: "
            + steel
            + "\nparts:\n  base: {stock: flat 100 x "
            + thickMm
            + ", length: 300"
            + (other.isEmpty() ? "" : ", steel: " + other)
            + "}\n  web: {stock: flat 80 x "
            + thickMm
            + ", length: 300, onto: base, face: top, set: standing along, at: middle}\n"
            + "joints:\n  tee: {between: [web, base], weld: fillet, leg: "
            + leg
            + "}\nmachines:\n  set: "
            + machine
            + "\n";
    return PlannedJoints.of(folder, yaml).get(0);
  }

  private static PreheatOpinion opinion(JointPlan plan, int which) {
    return plan.steel().preheats().get(which);
  }

  /**
   * S355J2, 20 mm: dossier values of hydrogen control, 165 F = 73.9 C (AWS D1.1, group C, medium).
   */
  @Test
  void threeMethodsStandSideBySide() {
    JointPlan plan = tee("S355J2", "", 20, "8", MAG);
    assertThat(plan.steel().preheats())
        .extracting(PreheatOpinion::method)
        .containsExactly(
            "EN 1011-2 method B",
            "table of AWS D1.1",
            "AWS D1.1 hydrogen control",
            "EN 1011-2 method A, table C.1");
    assertThat(opinion(plan, 0).counts()).isTrue();
    assertThat(opinion(plan, 1).counts()).isFalse();
    assertThat(opinion(plan, 1).outside().toString()).contains("not in its list");
    assertThat(opinion(plan, 2).answer().orElseThrow().value()).isCloseTo(73.9, within(0.05));
  }

  /** Below 10 mm method B is outside; A36 is listed, so the table and hydrogen control count. */
  @Test
  void eachMethodCountsOnlyInsideItsBox() {
    JointPlan plan = tee("A36", "", 6, "5", MAG);
    assertThat(opinion(plan, 0).counts()).isFalse();
    assertThat(opinion(plan, 0).outside().toString()).contains("thickness");
    assertThat(opinion(plan, 1).counts()).isTrue();
    assertThat(opinion(plan, 2).counts()).isTrue();
    assertThat(plan.preheat().value()).isEqualTo(20);
    assertThat(plan.notes().toString()).contains("no preheat: the metal is dry");
    assertThat(plan.steel().heating()).isEmpty();
  }

  /** More thickness never gives a lower preheat; an order to heat is a step of 10 degrees. */
  @Test
  void thickerIsNeverColder() {
    double last = 0;
    for (double thick : new double[] {6, 10, 12, 15, 20, 25, 30}) {
      double preheat = tee("S355J2", "", thick, "8", MAG).preheat().value();
      assertThat(preheat).as(thick + " mm").isGreaterThanOrEqualTo(last);
      assertThat(preheat % 10).isZero();
      last = preheat;
    }
  }

  /** 4140 lies outside every formula; the handbook range counts. */
  @Test
  void hardeningSteelIsHeatedByPractice() {
    JointPlan plan = tee("4140", "", 20, "8", MAG);
    assertThat(plan.preheat().value()).isEqualTo(260);
    assertThat(plan.preheat().formula().name()).isEqualTo("preheat-practice");
    assertThat(plan.notes().toString()).contains("martensite starts at about 328 C");
    assertThat(plan.steel().heating().toString()).contains("crayon for 260 C");
  }

  @Test
  void bothSteelsAreShownAndTheHarderGoverns() {
    JointPlan plan = tee("S235JR", "1045", 12, "6", MAG);
    List<SteelAdvice.PartSteel> parts = plan.steel().parts();
    assertThat(parts)
        .extracting(SteelAdvice.PartSteel::designation)
        .containsExactlyInAnyOrder("S235JR", "1045");
    // 1045 mid: CE 0.590, CEN 0.598 (own sums of the published formulas).
    assertThat(plan.carbonEquivalents().get(0).value()).isCloseTo(0.590, within(0.0005));
    List<Computed> of1045 =
        parts.stream()
            .filter(p -> p.designation().equals("1045"))
            .findFirst()
            .orElseThrow()
            .equivalents();
    assertThat(of1045.get(3).value()).isCloseTo(0.598, within(0.0005));
  }

  @Test
  void quenchedSteelIsNotTakenForSoftSteel() {
    JointPlan plan = tee("S690QL", "", 20, "8", MAG);
    assertThat(plan.preheat().value()).isGreaterThan(60);
    assertThat(plan.notes().toString()).contains("softer than S690QL").contains("ER110S-G");
  }

  @Test
  void theWireAtHandIsTheOneOnThePlan() {
    JointPlan plan = tee("S355J2", "", 10, "5", MAG);
    assertThat(plan.filler().orElseThrow().designation()).isEqualTo("G3Si1 (ER70S-6)");
    assertThat(plan.filler().orElseThrow().polarity()).isEqualTo("DC+");
  }

  @Test
  void aSinglePassWireIsRefusedForSeveralPasses() {
    String set =
        "{process: fcaw-s, current: 40..160 A, duty: 30% at 160 A, supply: 230 V 16 A,"
            + " wire: 0.9 mm E71T-GS}";
    assertThat(tee("A36", "", 5, "8", set).steel().forbidden())
        .extracting(SteelAdvice.Forbidden::why)
        .anyMatch(why -> why.contains("made for a single pass"));
    assertThat(tee("A36", "", 3, "3", set).steel().forbidden()).isEmpty();
    assertThat(tee("A36", "", 3, "3", set).filler().orElseThrow().polarity()).isEqualTo("DC-");
  }

  @Test
  void aWireOfAnotherProcessIsPointedOut() {
    String set =
        "{process: mag, current: 40..200 A, duty: 30% at 200 A, supply: 230 V 16 A,"
            + " wire: 0.9 mm E71T-11}";
    assertThat(tee("A36", "", 4, "3", set).notes().toString())
        .contains("E71T-11 at set is not made for mag");
  }

  @Test
  void stainlessToCarbonTakes309() {
    String set = "{process: tig, current: 10..200 A, duty: 60% at 160 A, supply: 230 V 16 A}";
    assertThat(tee("304", "S235JR", 4, "3", set).filler().orElseThrow().designation())
        .isEqualTo("309L");
  }

  @Test
  void carbonWireOnStainlessIsPointedOut() {
    assertThat(tee("304", "", 4, "3", MAG).notes().toString())
        .contains("ER70S-6 does not match stainless steel: take 308L");
  }

  @Test
  void aluminiumToSteelIsForbidden() {
    String set =
        "{process: mig, current: 30..200 A, duty: 30% at 200 A, supply: 230 V 16 A,"
            + " wire: 1.0 mm ER5356, gas: Ar}";
    assertThat(tee("5754", "S235JR", 5, "4", set).steel().forbidden()).isNotEmpty();
  }

  @Test
  void rutileRodsBringTooMuchHydrogenForThickSteel() {
    String set =
        "{process: mma, current: 20..200 A, duty: 30% at 200 A, supply: 230 V 16 A,"
            + " electrodes: 3.2 mm E6013}";
    JointPlan plan = tee("S355J2", "", 25, "8", set);
    assertThat(plan.notes().toString()).contains("low-hydrogen filler");
    assertThat(plan.preheat().value())
        .isGreaterThan(tee("S355J2", "", 25, "8", set.replace("E6013", "E7018")).preheat().value());
  }

  /**
   * By hand: a lug 80 x 20, 40 high, on a flat 100 x 20, 90 long, weld 80: the lug ends after 40 mm
   * and counts 20 x 40/75 = 10.67; the base reaches 90 x 100/80/2 = 56.25 mm each way and counts 20
   * x 56.25/75 = 15.0. Together 10.67 + 2 x 15.0 = 40.67 mm.
   */
  @Test
  void narrowPartsCountByTheirRealSection() {
    String yaml =
        "weldment: lug\nsteel: S355J2\nparts:\n  base: {stock: flat 100 x 20, length: 90}\n"
            + "  lug: {stock: flat 80 x 20, length: 40, onto: base, face: top,"
            + " set: standing along, at: middle}\njoints:\n"
            + "  lug: {between: [lug, base], leg: 8}\nmachines:\n  set: "
            + MAG
            + "\n";
    PreheatOpinion methodA = opinion(PlannedJoints.of(folder, yaml).get(0), 3);
    assertThat(methodA.words()).contains("combined thickness 40.7 mm");
    assertThat(methodA.answer()).isEmpty();
  }

  /** A bar of 20 mm cools like a plate of pi/4 x 20 = 15.71 mm and is preheated by its 20 mm. */
  @Test
  void aRoundBarIsNoPlate() {
    String yaml =
        "weldment: bar\nsteel: S355J2\nparts:\n"
            + "  base: {stock: flat 150 x 25, length: 300}\n"
            + "  bar: {stock: round bar 20, length: 200, onto: base, face: top, set: lying along,"
            + " at: middle}\njoints:\n  bar: {between: [bar, base]}\nmachines:\n  set: "
            + MAG
            + "\n";
    PreheatOpinion methodA = opinion(PlannedJoints.of(folder, yaml).get(0), 3);
    // 314.2 mm2 x 200 over 15.71 x 200: it reaches 20 mm, 15.71 x 20/75 = 4.19; base 25 whole.
    assertThat(methodA.words()).contains("(4.19 + 2 x 25 mm");
  }

  @Test
  void aTestPieceIsAskedForWhereNothingWasProved() {
    JointPlan plan = tee("S355J2", "", 20, "8", MAG);
    Coupon coupon = plan.coupon().orElseThrow();
    assertThat(coupon.pieces()).contains("150 x 75 x 20 mm").contains("tee");
    assertThat(coupon.welded()).contains("position PB").contains(" A, ").contains("mm/s");
    assertThat(coupon.see().toString()).contains("root").contains("leg of at least 8 mm");
    assertThat(coupon.cut().toString()).contains("nital");
  }

  @Test
  void aSmallMachineSaysHowItIsStretched() {
    String small =
        "{process: mag, current: 30..140 A, duty: 20% at 90 A, supply: 120 V 20 A, wire: 0.8 mm}";
    List<String> ways = Stretch.of(tee("S355J2", "", 20, "8", small).verdicts().get(0));
    assertThat(ways).hasSize(4);
    assertThat(ways.get(0)).startsWith("bevel: ").contains("root face");
    assertThat(ways.get(1)).startsWith("passes: ").contains("rests");
    assertThat(ways.get(2)).startsWith("preheat: ").contains("limit of this way is 250 C");
    assertThat(ways.get(3)).contains("none of these mends");
  }
}
