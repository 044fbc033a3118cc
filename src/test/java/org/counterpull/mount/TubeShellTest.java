package org.counterpull.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.counterpull.shrinkage.LugOnTube;
import org.counterpull.shrinkage.RingLoad;
import org.junit.jupiter.api.Test;

/** The shell under strips against the closed forms of rings and cylindrical shells. */
class TubeShellTest {
  private static final List<WeldPass> PASS = List.of(new WeldPass(500, 5, 15));
  private static final double RADIUS = 47.5;
  private static final double WALL = 5;

  private static Seam along(double from, double to, double rad) {
    return new Seam("along", from, rad, to, rad, PASS);
  }

  /** Harmonic of a section's radial displacement, by the trapezoidal rule over uneven places. */
  private static double harmonic(double[] places, double[] moved, int n, double about) {
    double sum = 0;
    for (int i = 0; i < places.length; i++) {
      int next = (i + 1) % places.length;
      double to = next == 0 ? Math.PI : places[next];
      double a = moved[i] * Math.cos(n * (places[i] - about));
      double b = moved[next] * Math.cos(n * (to - about));
      sum += (a + b) / 2 * (to - places[i]);
    }
    return sum / (n == 0 ? 2 * Math.PI : Math.PI);
  }

  // A kink phi along a whole tube: w = (R phi / pi) sum of cos(n th)/(n2 - 1); an external fillet
  // turns the
  // wall outwards and has the opposite sign. R 47.5, phi 0.02: n = 2 gives 0.1008 mm, n = 3 0.03780
  // mm.
  // Tolerance 6 %: cells of 4 mm under the weld, a tube of finite length whose middle is looked at.
  @Test
  void aKinkAlongTheTubeIsTheRingsClosedForm() {
    Seam seam = along(-160, 160, 0.001);
    TubeShell shell = new TubeShell(new BoredTube(100, WALL, -160, 160, 355), List.of(seam));
    double[][] moved = shell.moved(seam, 0, 0.02, 0);
    double[] middle = moved[shell.sections().length / 2];
    double second = harmonic(shell.places(), middle, 2, 0);
    double third = harmonic(shell.places(), middle, 3, 0);
    assertThat(second).isCloseTo(-RADIUS * 0.02 / Math.PI / 3, within(0.06 * 0.1008));
    assertThat(third).isCloseTo(-RADIUS * 0.02 / Math.PI / 8, within(0.06 * 0.0378));
  }

  // Under the weld the ring sinks by 0.2387 R phi and the diameter on its axis by 0.3183 R phi.
  @Test
  void theKinksOwnDiameters() {
    assertThat(LugOnTube.outOfRound(0)).isCloseTo(0.2387, within(0.00005));
    assertThat(LugOnTube.outOfRound(0) + LugOnTube.outOfRound(Math.PI))
        .isCloseTo(0.3183, within(0.00005));
    assertThat(LugOnTube.outOfRound(Math.PI / 2) * 2).isCloseTo(-0.1817, within(0.00005));
  }

  // Hoop shrinkage S of a lug's fillets over its length L: mean radius at mid-length
  // S/(2 pi) (1 - e^(-bL/2) cos(bL/2)); R 47.5, h 5, L 60, S 0.5: 0.08481 mm. Tolerance 6 %: cells
  // of 4 mm.
  @Test
  void hoopShrinkageOfALugIsTheShellsClosedForm() {
    Seam seam = along(-30, 30, 0.001);
    TubeShell shell = new TubeShell(new BoredTube(100, WALL, -200, 200, 355), List.of(seam));
    double[][] moved = shell.moved(seam, 0.5, 0, 0);
    double mean = 0;
    double[] sections = shell.sections();
    for (int j = 0; j < sections.length; j++) {
      if (Math.abs(sections[j]) <= 2.5) {
        mean = Math.min(mean, harmonic(shell.places(), moved[j], 0, 0));
      }
    }
    double closed = LugOnTube.boreShrinkage(0.5, RADIUS, WALL, 60).value();
    assertThat(closed).isCloseTo(0.08481, within(0.000005));
    assertThat(-mean).isCloseTo(closed, within(0.06 * closed));
  }

  // A weld round the tube draws its mouth in four times as far; 2.5 sqrt(R t) away 4 % is left.
  @Test
  void aRingFadesAndTheMouthMovesFourTimes() {
    double beta = RingLoad.betaPerMm(27.5, 5);
    BoredTube tube = new BoredTube(60, 5, -200, 200, 355);
    Partner flange = new Partner("flange", Partner.Kind.RING, 1, 10, 0, 470, 0.9);
    WeldPull pull = new WeldPull(tube, flange);
    double middle = pull.ring(Seams.round("r", 0, PASS), -1, 1).changeMm().value();
    double mouth = pull.ring(Seams.round("r", 200, PASS), 199.99, 200).changeMm().value();
    assertThat(mouth / middle).isCloseTo(4, within(0.01));
    double away = pull.ring(Seams.round("r", 0, PASS), tube.fadingMm(), 60).changeMm().value();
    assertThat(away / middle).isLessThan(0.05);
    assertThat(tube.fadingMm()).isCloseTo(29.32, within(0.005));
    assertThat(Math.exp(-beta * tube.fadingMm())).isCloseTo(0.040, within(0.0005));
  }

  // Everything mirrors: a weld at +a and one at -a move mirrored diameters.
  @Test
  void mirroredWeldsMoveMirroredBores() {
    Seam left = along(-20, 20, -0.17);
    Seam right = along(-20, 20, 0.17);
    TubeShell shell = new TubeShell(new BoredTube(60, 5, -120, 120, 355), List.of(left, right));
    double[][] a = shell.moved(left, 0.1, 0.01, 10_000);
    double[][] b = shell.moved(right, 0.1, 0.01, 10_000);
    int j = shell.sections().length / 2;
    for (int n = 2; n <= 4; n++) {
      assertThat(harmonic(shell.places(), a[j], n, 0))
          .isCloseTo(harmonic(shell.places(), b[j], n, 0), within(0.02));
    }
  }
}
