package org.counterpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.shrinkage.RestrainedShrinkage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A run of several segments between two plates that are held apart. */
class RestrainedRunTest {
  private static final double LENGTH_MM = 100;
  private static final double THICKNESS_MM = 12;

  // Published: S / S free = 1 / (1 + k / 15) with k the mean stress along the weld, in kgf/mm2, for
  // 1 mm of mean closure (the spring in series that stands for Watanabe and Satoh 1961). The weld's
  // own beginning is no part of k, so the number of segments and the direction don't matter.
  @ParameterizedTest
  @CsvSource({"1,0", "5,0", "5,1", "5,5", "5,20", "10,20"})
  void theWholeRunFollowsThePublishedRestraint(int segments, double restraintKgf) {
    double restraint = restraintKgf * RestrainedShrinkage.PULL_STIFFNESS_MPA_PER_MM / 15;
    for (boolean reversed : new boolean[] {false, true}) {
      assertThat(closing(segments, restraint, reversed))
          .isCloseTo(1 / (1 + restraintKgf / 15), within(1e-9));
    }
  }

  /** Closing in the middle of a run that wants 1 mm; restraint in MPa per mm. */
  private static double closing(int segments, double restraint, boolean reversed) {
    Assembly assembly = new Assembly();
    int still = assembly.body(new RigidBody(Vector3D.ZERO));
    int moving = assembly.body(new RigidBody(Vector3D.ZERO));
    List<Integer> welds = new ArrayList<>();
    List<Integer> holds = new ArrayList<>();
    for (int i = 0; i < segments; i++) {
      Vector3D at = new Vector3D(LENGTH_MM * (i - (segments - 1) / 2.0), 0, 0);
      MaterialPoint one = Shapes.at(assembly, still, 0, at);
      MaterialPoint other = Shapes.at(assembly, moving, 0, at);
      welds.add(assembly.link(one, other, Shapes.AXES));
      holds.add(assembly.link(one, other, Shapes.AXES));
    }
    Vector3D middle = Vector3D.ZERO;
    int ground = assembly.groundLink(Shapes.at(assembly, still, 0, middle), Shapes.AXES);
    int reading =
        assembly.reading(
            assembly.displacement(Shapes.at(assembly, moving, 0, middle), Vector3D.PLUS_J));
    Structure structure = new Structure(assembly, 1);
    structure.join(ground, SpringStiffness.RIGID);
    double held = restraint * THICKNESS_MM * LENGTH_MM;
    if (held > 0) {
      // Across only: soft springs the other ways would leave the welds' share to rounding.
      holds.forEach(link -> structure.join(link, new SpringStiffness(0, held, 0, 0, 0, 0)));
    }
    SpringStiffness cold =
        WeldStiffness.cold(LENGTH_MM, THICKNESS_MM, WeldStiffness.GAUGE_MM, ElasticMaterial.STEEL);
    SpringStiffness hot = WeldStiffness.pulling(LENGTH_MM, THICKNESS_MM);
    SpringStiffness pulling =
        new SpringStiffness(
            cold.along(),
            hot.across(),
            cold.normal(),
            hot.aboutAlong(),
            cold.aboutAcross(),
            cold.aboutNormal());
    Run.whole(
            "run",
            welds.stream()
                .map(
                    link ->
                        new Segment(
                            link,
                            pulling,
                            cold,
                            new double[] {0, -1, 0, 0, 0, 0},
                            List.of(),
                            List.of()))
                .toList())
        .layOn(structure, reversed, 0);
    return -structure.reading(reading);
  }
}
