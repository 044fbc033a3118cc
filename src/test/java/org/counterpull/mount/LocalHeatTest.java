package org.counterpull.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.solve.Fineness;
import org.counterpull.heat.solve.Simulation;
import org.junit.jupiter.api.Test;

/** Heat of a lug on a tube: what must hold, and an independent solution. */
class LocalHeatTest {
  private static HeatFigures direct(MountCase mount) {
    return LocalHeat.of(mount, HeatSetup.direct(mount));
  }

  private static double seal(HeatFigures heat) {
    return heat.of("seal").orElseThrow().peakC();
  }

  // A seal never gets hotter by distance, by a thicker wall at equal heat, or by less heat.
  @Test
  void aSealIsSparedByDistanceThicknessAndLessHeat() {
    HeatFigures base = direct(Cases.cradle());
    double far = seal(direct(Cases.lug(60, 5, 6, 90, 1, "H8")));
    HeatFigures near = direct(Cases.lug(60, 5, 6, 20, 1, "H8"));
    assertThat(seal(near)).isGreaterThan(seal(base));
    assertThat(seal(base)).isGreaterThan(far);
    double thick = seal(direct(Cases.lug(60, 8, 6, 45, 1, "H8")));
    assertThat(thick).isLessThan(seal(base));
    assertThat(seal(direct(Cases.lug(60, 12, 6, 45, 1, "H8")))).isLessThan(thick);
    HeatFigures less = direct(Cases.lug(60, 5, 6, 45, 0.6, "H8"));
    assertThat(seal(less)).isLessThan(seal(base));
    // NBR bears 100 C for long, 120 C for minutes: too near it is spoilt, far enough it isn't.
    assertThat(near.of("seal").orElseThrow().spoilt()).isTrue();
    assertThat(less.of("seal").orElseThrow().spoilt()).isFalse();
    assertThat(base.cellsThroughWall()).isGreaterThanOrEqualTo(4);
    assertThat(Math.abs(base.imbalance())).isLessThan(1e-9);
    independentSolution(less);
  }

  // An independent solution of a lug on a tube 60 x 5 gave about 900 C at the bore for a fillet
  // welded directly;
  // its heat is not known. With 527 J/mm net here: within 10 %.
  private static void independentSolution(HeatFigures direct) {
    assertThat(direct.borePeakC()).isCloseTo(900, within(90.0));
  }

  // The same solution: lug on a sleeve 65 C at the bore, ring weld at the sleeve's end about 770 C
  // under the
  // ring. The ring within 10 %; the sleeve is hotter here (98 C), with gap and heat of the other
  // not known: of
  // the same order, an eighth of the direct weld or less.
  @Test
  void aSleeveSparesTheBoreAndItsRingDoesNot() {
    MountCase mount = Cases.lug(60, 5, 6, 45, 0.6, "H8");
    Sleeve sleeve = new Sleeve(-60, 60, 5, 0.25, Optional.empty());
    BoredTube shape = sleeve.asTube(mount.tube());
    List<Seam> seams = Seams.aroundLug(shape, mount.partner(), mount.seams().get(0).passes());
    HeatSetup onSleeve =
        new HeatSetup(seams, false, false, Inside.DRAINED, Optional.of(sleeve), true);
    assertThat(LocalHeat.of(mount, onSleeve).borePeakC()).isBetween(55.0, 112.0);
    List<WeldPass> passes = LegHeat.of(WeldingProcess.MAG, 4, 130).passes();
    HeatSetup ring =
        new HeatSetup(
            List.of(Seams.round("ring", -60, passes)),
            false,
            false,
            Inside.DRAINED,
            Optional.of(sleeve),
            false);
    assertThat(LocalHeat.of(mount, ring).borePeakC()).isCloseTo(770, within(77.0));
  }

  // One-dimensional hand calculation of the air gap: sleeve at 220 C over a tube at 20 C, 0.25 mm
  // of air.
  // Air at 120 C 0.0243 (393/273.15)^0.8 = 0.0325 W/mK, over 0.25 mm 130 W/m2K; radiation between
  // emissivities
  // of 0.7: 0.538 x 5.67e-8 (493^2 + 293^2)(493 + 293) = 7.9 W/m2K; together 138 W/m2K. The tube
  // stores
  // 7850 x 447 x 5 mm x 27.5/30 = 16.1 kJ/m2K of its outside (c of EN 1993-1-2 at 27 C), so it
  // warms by 1.71 K/s
  // at first; in 5 s, with the difference fallen by 8.6 + 7.6 K at the end, 8.2 K. Tolerance 4 %.
  @Test
  void anAirGapPassesWhatItDoesByHand() {
    MountCase mount = Cases.cradle();
    Sleeve sleeve =
        new Sleeve(mount.tube().lowZMm(), mount.tube().highZMm(), 5, 0.25, Optional.empty());
    HeatSetup setup =
        new HeatSetup(mount.seams(), false, false, Inside.DRAINED, Optional.of(sleeve), false);
    LocalModel model = new LocalModel(mount, setup);
    Simulation simulation = new Simulation(model.heat(), Fineness.FINE, 20);
    simulation.startAt(model.base(), at -> 220);
    simulation.advanceTo(5);
    double rise = 0;
    Block tube = model.tube();
    for (int p = tube.first(); p < tube.end(); p++) {
      rise += (simulation.temperatureC(tube, p) - 20) * tube.volumeMm3()[p];
    }
    rise /= tube.totalVolumeMm3();
    double airWPerM2K = 0.0243 * Math.pow(393.15 / 273.15, 0.8) / 0.25e-3;
    double both = 1 / (2 / 0.7 - 1);
    double radiated = both * 5.67e-8 * (493.15 * 493.15 + 293.15 * 293.15) * (493.15 + 293.15);
    double tubeJPerM2K = 7850 * 447 * 5e-3 * 27.5 / 30;
    double sleeveJPerM2K = 7850 * 535 * 5e-3 * 32.75 / 30.25;
    double rate = (airWPerM2K + radiated) * (1 / tubeJPerM2K + 1 / sleeveJPerM2K);
    double share = sleeveJPerM2K / (sleeveJPerM2K + tubeJPerM2K);
    double byHand = 200 * share * (1 - Math.exp(-rate * 5));
    assertThat(rise).isCloseTo(byHand, within(0.04 * byHand));
  }

  @Test
  void aSinkAndOilCoolAndWaitsTakeTime() {
    MountCase mount = Cases.cradle();
    HeatFigures plain = direct(mount);
    HeatFigures cooled = LocalHeat.of(mount, HeatSetup.direct(mount).withChill());
    assertThat(seal(cooled)).isLessThan(seal(plain) - 30);
    assertThat(cooled.borePeakC()).isLessThan(plain.borePeakC());
    HeatFigures waited = LocalHeat.of(mount, HeatSetup.direct(mount).waiting());
    assertThat(seal(waited)).isLessThan(seal(plain));
    assertThat(waited.weldedS()).isGreaterThan(plain.weldedS() + 300);
    HeatSetup oil = new HeatSetup(mount.seams(), false, false, Inside.OIL, Optional.empty(), true);
    assertThat(seal(LocalHeat.of(mount, oil))).isLessThan(seal(plain));
  }
}
