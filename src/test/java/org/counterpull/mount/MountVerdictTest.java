package org.counterpull.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.counterpull.weldment.Feature;
import org.junit.jupiter.api.Test;

/** Verdicts, and what turns them. */
class MountVerdictTest {
  private static Accept accept(
      double outside, double wall, double leg, double heat, String class1) {
    MountCase mount = Cases.lug(outside, wall, leg, 45, heat, class1);
    return new MountBench(mount).pulled(mount.seams()).get(0).accept().orElseThrow();
  }

  // The manual's own table: tolerance, wall and heat turn the verdict the right way.
  @Test
  void theManualsTableOfFlipsHolds() throws IOException {
    List<String[]> rows =
        Files.readAllLines(Path.of("docs/manual/mount.md")).stream()
            .filter(line -> line.matches("\\| \\d+ x \\d+ \\|.*"))
            .map(line -> line.split(" *\\| *"))
            .toList();
    assertThat(rows).hasSizeGreaterThanOrEqualTo(5);
    for (String[] row : rows) {
      String[] tube = row[1].split(" x ");
      Accept found =
          accept(
              Double.parseDouble(tube[0]),
              Double.parseDouble(tube[1]),
              Double.parseDouble(row[2]),
              Double.parseDouble(row[3]),
              row[4]);
      assertThat(found.outcome().words()).as(String.join(" ", row)).isEqualTo(row[5]);
    }
  }

  // Guide f7 at 50: -0.025 to -0.050; H8 0.039; Lame at 16 MPa 0.0227 (table of growth, tube 50 x
  // 60): 0.1117 mm, of 0.254 mm for 90 Shore. Moved 0.386 mm out of round it is 0.193 mm more.
  @Test
  void theGapBehindASealGrowsWithPressureAndOvality() {
    MountCase mount = Cases.cradle();
    BoreFigure still = new MountBench(mount).still().get(0);
    SealGap cold = SealGap.of(still, mount.tube());
    assertThat(cold.gapMm()).isCloseTo(0.1117, within(0.0001));
    assertThat(cold.bridgedMm()).isCloseTo(0.254, within(0.0005));
    assertThat(cold.holds()).isTrue();
    BoreMovement oval = new BoreMovement(0, Span.ZERO, Span.ZERO, 0, 0.386, 0);
    SealGap wide =
        SealGap.of(BoreFigure.of(mount.sized().get(0), mount.tube(), oval), mount.tube());
    assertThat(wide.gapMm()).isCloseTo(0.1117 + 0.193, within(0.0001));
    assertThat(wide.holds()).isFalse();
  }

  // Own proposal: a third of the band, the band, 0.18 mm. Band of H8 at 50: 0.039 mm.
  @Test
  void whatAMovedBoreMeans() {
    assertThat(Accept.of(new Span(0.002, 0.005, 0.012), 0.039)).isEqualTo(Accept.GAUGE);
    assertThat(Accept.of(new Span(0.005, 0.010, 0.020), 0.039)).isEqualTo(Accept.HONE);
    assertThat(Accept.of(new Span(0.020, 0.039, 0.080), 0.039)).isEqualTo(Accept.HONE);
    assertThat(Accept.of(new Span(0.05, 0.1, 0.2), 0.039)).isEqualTo(Accept.NEXT_SIZE);
    assertThat(Accept.of(new Span(0.1, 0.19, 0.4), 0.039)).isEqualTo(Accept.REJECT);
    assertThat(Accept.of(new Span(0.1, 0.19, 0.4), 0.5)).isEqualTo(Accept.HONE);
  }

  @Test
  void directIsFineWhereNothingSlidesAndNothingIsNear() {
    MountCase mount = Cases.unswept();
    HeatFigures heat = LocalHeat.of(mount, HeatSetup.direct(mount));
    WayAnswer drawn = new DirectWays(new MountBench(mount)).asDrawn(heat);
    assertThat(drawn.outcome()).as("%s", drawn.deciding()).isEqualTo(Outcome.FITS);
    assertThat(drawn.bores().get(0).accept()).contains(Accept.GAUGE);
    assertThat(heat.of("seal").orElseThrow().spoilt()).isFalse();
  }

  @Test
  void theCradlesLugMustNotBeWeldedToItsBarrel() {
    MountAnswer answer = MountWays.of(Cases.cradle());
    WayAnswer drawn = answer.of(Way.AS_DRAWN);
    assertThat(drawn.outcome()).isEqualTo(Outcome.DONT);
    BoreFigure bore = drawn.bores().get(0);
    assertThat(bore.accept()).contains(Accept.REJECT);
    assertThat(bore.through()).isEqualTo(BoreFigure.Through.NO);
    assertThat(bore.movement().meanMm()).isNegative();
    for (Way way : List.of(Way.SMALL_PASSES, Way.STRIPPED, Way.HEAT_SINK)) {
      assertThat(answer.of(way).outcome()).as(way.words()).isEqualTo(Outcome.DONT);
    }
    for (Way way : List.of(Way.SLEEVE, Way.SADDLE, Way.CLAMP, Way.PINNED)) {
      assertThat(answer.of(way).outcome()).as(way.words()).isNotEqualTo(Outcome.DONT);
      assertThat(answer.of(way).bores().get(0).through()).isEqualTo(BoreFigure.Through.YES);
      assertThat(answer.of(way).parts()).as(way.words()).isNotEmpty();
      answer.of(way).mostUsed().ifPresent(u -> assertThat(u.use()).isLessThanOrEqualTo(1 + 1e-9));
    }
    // The piston sweeps everything: nowhere to fasten a sleeve by a ring weld.
    assertThat(answer.of(Way.SLEEVE_RING).outcome()).isEqualTo(Outcome.DONT);
    assertThat(answer.of(Way.SLEEVE_RING).deciding().get(0)).contains("29 mm");
    Sleeve sleeve = answer.of(Way.SLEEVE).sleeve().orElseThrow();
    assertThat(sleeve.lengthMm()).isGreaterThanOrEqualTo(60);
    assertThat(sleeve.wallMm()).isGreaterThanOrEqualTo(5);
    assertThat(2 * sleeve.gapMm()).isBetween(0.2, 0.5);
  }

  @Test
  void aRingWeldKeepsItsDistanceFromAllThatMatters() {
    MountCase near = Cases.cradle();
    Sensitive bore = near.near().get(0);
    Sensitive from120 =
        new Sensitive(
            bore.name(),
            Feature.Kind.BORE,
            -120,
            bore.toZMm(),
            true,
            Optional.empty(),
            bore.tolerance(),
            Optional.empty(),
            false);
    MountCase mount =
        new MountCase(
            near.name(),
            near.tube(),
            near.partner(),
            near.seams(),
            near.legMm(),
            List.of(from120, near.near().get(1)),
            20,
            1.06,
            10.7,
            near.forceN(),
            45,
            Inside.DRAINED,
            List.of());
    double z = new SleeveSizing(new MountBench(mount)).ringPlace().orElseThrow();
    double keep = mount.tube().fadingMm();
    assertThat(-120 - z).isGreaterThanOrEqualTo(keep);
    assertThat(z - mount.tube().lowZMm()).isGreaterThanOrEqualTo(keep);
  }

  // A short sleeve presses its ends into the tube: 6 M/(D L2) with M = 12 000 (45 + 30) N mm, D 60,
  // L 60 is 25 MPa; Lame
  // squeezes the bore by 2 x 50 x 25 x 3600/(206 000 x 1100) = 0.0397 mm, three times a third of
  // 0.039 mm.
  @Test
  void aShortSleeveAtHandPressesTheBore() {
    MountBench bench = new MountBench(Cases.cradle());
    GivenSleeve given = new GivenSleeve(6.3, 60, 0.2);
    SleeveSizing.Sized sized = new SleeveSizing(bench, Optional.of(given)).around().orElseThrow();
    assertThat(sized.bearingMPa()).isCloseTo(25, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(sized.squeezeMm())
        .isCloseTo(0.0397, org.assertj.core.api.Assertions.within(0.00005));
    WayAnswer answer = new SleeveWays(bench, Optional.of(given)).loose(Optional.empty());
    assertThat(answer.outcome()).isEqualTo(Outcome.DONT);
    assertThat(String.join(" ", answer.deciding())).contains("a longer sleeve");
  }

  // Friction by hand: 18 000 x 1.25/(2 x 0.15) = 75 000 N; two bolts M12 8.8 hold 2 x 0.7 x 800 x
  // 84.3 = 94 416 N.
  // Squeeze 2 d p D2/(E (D2 - d2)) with p = 75 000/(60 L): 0.0131 mm at 155 mm, the first length
  // not above 0.013.
  @Test
  void aClampHoldsByFrictionAndSparesTheBore() {
    ClampSizing.Sized clamp =
        ClampSizing.of(Cases.cradle().tube(), 18_000, 0.039 * 0.333).orElseThrow();
    assertThat(clamp.bolts()).isEqualTo(2);
    assertThat(clamp.size()).isEqualTo(12);
    double pressure = 75_000 / (60 * clamp.lengthMm());
    double squeeze = 2 * 50 * pressure * 3600 / (206_000 * (3600.0 - 2500.0));
    assertThat(clamp.squeezeMm()).isCloseTo(squeeze, org.assertj.core.api.Assertions.within(1e-9));
    assertThat(squeeze).isLessThanOrEqualTo(0.039 * 0.333);
    assertThat(squeeze * clamp.lengthMm() / (clamp.lengthMm() - 5)).isGreaterThan(0.039 * 0.333);
    assertThat(ClampSizing.of(Cases.cradle().tube(), 180_000, 0.013)).isEmpty();
  }
}
