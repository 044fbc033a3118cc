package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.counterpull.groove.GrooveSide;
import org.counterpull.jointplan.PassPlan.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeadLayoutTest {
  /** V 60 degrees, 10 mm, gap 2, root face 1.5. */
  private static final GrooveSide V10 = new GrooveSide(2, 1.5, 8.5, Math.toRadians(30), 2, 0);

  /**
   * Source: derived, worked example of pass layout: a root of 16.45 mm2 and fills of 20.32 mm2
   * reach 4.897, 7.608 and 9.604 mm. The printed areas and levels agree among themselves to 0.004
   * mm only.
   */
  @ParameterizedTest
  @CsvSource({"16.45, 4.897", "36.77, 7.608", "57.09, 9.604"})
  void fillLevelsOfTheWorkedV(double filledMm2, double levelMm) {
    assertThat(V10.levelMm(filledMm2)).isCloseTo(levelMm, within(0.004));
  }

  /** Source: the same example: four passes, a root, two fills and a cap of one layer or two. */
  @Test
  void theWorkedVTakesFourPasses() {
    BeadLimits limits = new BeadLimits(6, 20.32, 3, 4.897, 12);
    List<Bead> beads = BeadLayout.groove(V10, 11.81, limits, Kind.ROOT);
    assertThat(beads).hasSize(4);
    assertThat(beads.get(0).kind()).isEqualTo(Kind.ROOT);
    assertThat(beads.get(3).kind()).isEqualTo(Kind.CAP);
    assertThat(beads.stream().mapToDouble(Bead::areaMm2).sum())
        .isCloseTo(61.71 + 11.81, within(0.01));
  }

  /**
   * Source: derived, passes of fillets at 1.21 z2/2 and bead areas 12, 18, 25 mm2: z5 2/1/1, z6
   * 2/2/1, z8 4/3/2, z10 6/4/3, z12 8/5/4.
   */
  @ParameterizedTest
  @CsvSource({
    "5,12,2", "5,18,1", "6,12,2", "6,18,2", "6,25,1", "8,12,4", "8,18,3", "8,25,2", "10,12,6",
    "10,25,3", "12,12,8", "12,18,5", "12,25,4"
  })
  void filletsTakeThePublishedNumberOfPasses(double legMm, double beadMm2, int passes) {
    BeadLimits limits = new BeadLimits(20, beadMm2, 3, 3, 8);
    assertThat(BeadLayout.fillet(1.21 * legMm * legMm / 2, limits)).hasSize(passes);
  }

  @Test
  void threeBeadsStackOneThenTwo() {
    BeadLimits limits = new BeadLimits(20, 18, 3, 3, 8);
    assertThat(BeadLayout.fillet(38.7, limits)).extracting(Bead::layer).containsExactly(1, 2, 2);
  }
}
