package org.counterpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Beams and sections against textbook strength of materials. */
class BeamTextbookTest {
  private static final double E = 206_000;
  private static final double G = ElasticMaterial.STEEL.shearModulusMPa();
  private static final Vector3D UP = Vector3D.PLUS_K;

  /** A grounded bar with one load; gives displacements of its far end. */
  static double[] tip(
      BeamBody bar, int loadedNode, Vector3D force, Vector3D moment, int groundedNode) {
    Assembly assembly = new Assembly();
    int body = assembly.body(bar);
    MaterialPoint end = Shapes.at(assembly, body, loadedNode);
    int ground = assembly.groundLink(Shapes.at(assembly, body, groundedNode), Shapes.AXES);
    int[] readings = new int[6];
    List<Vector3D> axes = List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);
    for (int i = 0; i < 3; i++) {
      readings[i] = assembly.reading(assembly.displacement(end, axes.get(i)));
      readings[i + 3] = assembly.reading(Coordinate.turn(end, axes.get(i)));
    }
    Load load =
        Load.force(assembly.displacement(end, force), 1)
            .plus(Load.force(Coordinate.turn(end, moment), 1));
    int number = assembly.load(load);
    Structure structure = new Structure(assembly, 1);
    structure.join(ground, SpringStiffness.RIGID);
    structure.apply(number, 1, 0);
    double[] values = new double[6];
    for (int i = 0; i < 6; i++) {
      values[i] = structure.reading(readings[i]);
    }
    return values;
  }

  static BeamBody bar(double length, int pieces, SectionStiffness section) {
    return BeamBody.straight(
        Shapes.line(Vector3D.ZERO, new Vector3D(length, 0, 0), pieces),
        section,
        UP,
        ElasticMaterial.STEEL);
  }

  // Cantilever: F L3 / (3 E I) + F L / (G As), slope F L2 / (2 E I); N L / (E A); T L / (G J).
  @Test
  void cantileverTimoshenko() {
    SectionStiffness s = SectionShapes.rectangle(30, 60);
    double length = 700;
    double[] bent = tip(bar(length, 7, s), 7, new Vector3D(0, 0, -1000), Vector3D.ZERO, 0);
    double expected =
        1000 * Math.pow(length, 3) / (3 * E * s.iyMm4()) + 1000 * length / (G * s.shearAreaZMm2());
    assertThat(bent[2]).isCloseTo(-expected, within(1e-9 * expected));
    double slope = 1000 * length * length / (2 * E * s.iyMm4());
    assertThat(bent[4]).isCloseTo(slope, within(1e-9 * slope));
    double[] pulled = tip(bar(length, 3, s), 3, new Vector3D(5000, 0, 0), Vector3D.ZERO, 0);
    assertThat(pulled[0]).isCloseTo(5000 * length / (E * 1800), within(1e-12));
    double[] twisted = tip(bar(length, 3, s), 3, Vector3D.ZERO, new Vector3D(1e5, 0, 0), 0);
    assertThat(twisted[3]).isCloseTo(1e5 * length / (G * s.torsionMm4()), within(1e-12));
  }

  // Portal with fixed feet under a force at its corner: moments at the feet and sway of the slender
  // frame, sway = P h3 (3k + 2) / (12 E I (6k + 1)), k = I_beam h / (I_column l) (Kleinlogel).
  @Test
  void portalWithFixedFeet() {
    assertThat(portalSway()).isCloseTo(1, within(1e-6));
  }

  /** Sway of the portal over that of the formula. */
  static double portalSway() {
    SectionStiffness column = slenderStiffAxially(SectionShapes.rectangle(40, 40));
    SectionStiffness beam = slenderStiffAxially(SectionShapes.rectangle(40, 60));
    double h = 800;
    double l = 1200;
    List<Vector3D> nodes =
        List.of(Vector3D.ZERO, new Vector3D(0, 0, h), new Vector3D(l, 0, h), new Vector3D(l, 0, 0));
    List<BeamElement> elements =
        List.of(
            new BeamElement(column, Vector3D.PLUS_I),
            new BeamElement(beam, UP),
            new BeamElement(column, Vector3D.PLUS_I));
    Assembly assembly = new Assembly();
    int body =
        assembly.body(new BeamBody(nodes, elements, ElasticMaterial.STEEL, List.of(1, 0, 2, 3)));
    int left = assembly.groundLink(Shapes.at(assembly, body, 1), Shapes.AXES);
    int right = assembly.groundLink(Shapes.at(assembly, body, 3), Shapes.AXES);
    Coordinate corner = assembly.displacement(Shapes.at(assembly, body, 0), Vector3D.PLUS_I);
    int sway = assembly.reading(corner);
    int load = assembly.load(Load.force(corner, 1000));
    Structure structure = new Structure(assembly, 1);
    structure.join(left, SpringStiffness.RIGID);
    structure.join(right, SpringStiffness.RIGID);
    structure.apply(load, 1, 0);
    double k = beam.iyMm4() * h / (column.iyMm4() * l);
    double expected = 1000 * Math.pow(h, 3) * (3 * k + 2) / (12 * E * column.iyMm4() * (6 * k + 1));
    double footMoment = 1000 * h / 2 * (3 * k + 1) / (6 * k + 1);
    assertThat(Math.abs(structure.tension(left)[4]))
        .isCloseTo(footMoment, within(1e-5 * footMoment));
    assertThat(Math.abs(structure.tension(right)[4]))
        .isCloseTo(footMoment, within(1e-5 * footMoment));
    return structure.reading(sway) / expected;
  }

  // Angle cantilever under a force along a leg: it moves across the force as well, by
  // F L3 / (3 E) [Iz, Iyz; Iyz, Iy]^-1 (unsymmetric bending, e.g. Timoshenko, Strength of
  // Materials).
  @Test
  void angleUnderSkewLoad() {
    SectionStiffness angle = Shapes.slender(SectionShapes.angle(50, 50, 6));
    double length = 900;
    double[] u = tip(bar(length, 3, angle), 3, new Vector3D(0, 0, -500), Vector3D.ZERO, 0);
    double determinant = angle.iyMm4() * angle.izMm4() - Math.pow(angle.iyzMm4(), 2);
    double factor = -500 * Math.pow(length, 3) / (3 * E * determinant);
    // The force through the centroid twists the angle about its shear centre as well; the centroid
    // moves along y and z by that twist too.
    double torque = 500 * angle.shearCentreYMm();
    double twist = torque * length / (G * angle.torsionMm4());
    assertThat(u[3]).isCloseTo(twist, within(1e-9));
    assertThat(u[2])
        .isCloseTo(factor * angle.izMm4() - twist * angle.shearCentreYMm(), within(1e-9));
    assertThat(u[1])
        .isCloseTo(-factor * angle.iyzMm4() + twist * angle.shearCentreZMm(), within(1e-9));
    assertThat(Math.abs(u[1])).isGreaterThan(0.3 * Math.abs(u[2]));
  }

  // Equal angle: its axis of symmetry is principal. A force along it moves the tip along it alone,
  // by
  // F L3 / (3 E I_v) with I_v = I + I_yz, the least second moment.
  @Test
  void equalAngleUnderForceAlongItsAxisOfSymmetry() {
    SectionStiffness angle = Shapes.slender(SectionShapes.angle(50, 50, 6));
    double[] u = tip(bar(900, 3, angle), 3, new Vector3D(0, 300, 300), Vector3D.ZERO, 0);
    double least = angle.iyMm4() + angle.iyzMm4();
    double expected = 300 * Math.pow(900, 3) / (3 * E * least);
    assertThat(least).isLessThan(angle.iyMm4());
    assertThat(u[1]).isCloseTo(expected, within(1e-9 * expected));
    assertThat(u[2]).isCloseTo(expected, within(1e-9 * expected));
  }

  // Quarter circle of radius R in n straight pieces, force at the tip in its plane along the radius
  // of
  // the foot: pi F R3 / (4 E I) (Castigliano); error falls with n squared.
  @Test
  void curvedBarInSegments() {
    double[] errors = {curvedBar(5) - 1, curvedBar(10) - 1, curvedBar(20) - 1};
    assertThat(Math.abs(errors[2])).isLessThan(2e-3);
    assertThat(errors[0] / errors[1]).isBetween(3.5, 4.5);
    assertThat(errors[1] / errors[2]).isBetween(3.5, 4.5);
  }

  /** Deflection of the quarter circle in straight pieces over the exact one. */
  static double curvedBar(int pieces) {
    double radius = 400;
    SectionStiffness s = slenderStiffAxially(SectionShapes.rectangle(20, 20));
    double exact = Math.PI * 100 * Math.pow(radius, 3) / (4 * E * s.iyMm4());
    List<Vector3D> nodes = new ArrayList<>();
    List<BeamElement> elements = new ArrayList<>();
    for (int i = 0; i <= pieces; i++) {
      double angle = Math.PI / 2 * i / pieces;
      nodes.add(new Vector3D(radius * Math.sin(angle), 0, radius * Math.cos(angle)));
      if (i > 0) {
        elements.add(new BeamElement(s, Vector3D.PLUS_J));
      }
    }
    BeamBody arc = new BeamBody(nodes, elements, ElasticMaterial.STEEL, List.of(0, pieces));
    // The foot lies at the top with its tangent along x, the tip at the side.
    return tip(arc, 1, new Vector3D(100, 0, 0), Vector3D.ZERO, 0)[0] / exact;
  }

  // A tendon along the top edge of a straight bar: camber F e L2 / (8 E I); an independent solution
  // in
  // brick elements of 12 x 60 x 1000, 60 kN, E 210 000 agrees with beam theory within 0.14 %.
  @Test
  void tendonAlongTheEdge() {
    ElasticMaterial material = new ElasticMaterial(210_000, 0.3);
    Assembly assembly = new Assembly();
    int body =
        assembly.body(
            BeamBody.straight(
                Shapes.line(Vector3D.ZERO, new Vector3D(1000, 0, 0), 10),
                SectionShapes.rectangle(12, 60),
                UP,
                material));
    Vector3D edge = new Vector3D(0, 0, 30);
    List<Integer> pieces = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      pieces.add(
          assembly.load(
              Load.tendon(
                  assembly,
                  Shapes.at(assembly, body, i, edge),
                  Shapes.at(assembly, body, i + 1, edge),
                  60_000)));
    }
    Coordinate middle = assembly.displacement(Shapes.at(assembly, body, 5), UP);
    Coordinate ends =
        assembly
            .displacement(Shapes.at(assembly, body, 0), UP)
            .plus(assembly.displacement(Shapes.at(assembly, body, 10), UP));
    int camber = assembly.reading(middle.plus(ends.times(-0.5)));
    Structure structure = new Structure(assembly, 1);
    pieces.forEach(piece -> structure.apply(piece, 1, 0));
    double expected = 60_000.0 * 30 * 1e6 / (8 * 210_000 * 216_000.0);
    assertThat(Math.abs(structure.reading(camber))).isCloseTo(expected, within(1e-9 * expected));
  }

  // A wall that shrinks across: shortening S A_w / A and kink S A_w c / I, hollow on its side.
  @Test
  void wallShrinkageShortensAndKinks() {
    SectionStiffness tube = SectionShapes.rectangularTube(40, 60, 4);
    BeamBody bar = bar(1000, 4, tube);
    Assembly assembly = new Assembly();
    int body = assembly.body(bar);
    // The top wall, 40 x 4 at z = 28, shrinks by 0.2 mm in the middle of the second element.
    int load = assembly.load(Load.strain(body, bar.wallShrinkage(1, 0.5, 0.2, 160, 0, 28)));
    int length =
        assembly.reading(
            assembly.opening(
                Shapes.at(assembly, body, 0), Shapes.at(assembly, body, 4), Vector3D.PLUS_I));
    int kink =
        assembly.reading(
            Coordinate.turn(Shapes.at(assembly, body, 4), Vector3D.PLUS_J)
                .plus(Coordinate.turn(Shapes.at(assembly, body, 0), Vector3D.PLUS_J).times(-1)));
    int sag =
        assembly.reading(
            assembly
                .displacement(Shapes.at(assembly, body, 4), UP)
                .plus(assembly.displacement(Shapes.at(assembly, body, 0), UP).times(-1)));
    Structure structure = new Structure(assembly, 1);
    structure.apply(load, 1, 0);
    double turn = 0.2 * 160 * 28 / tube.iyMm4();
    assertThat(structure.reading(length)).isCloseTo(-0.2 * 160 / tube.areaMm2(), within(1e-12));
    // A top that shortens turns the far end up: about y by -turn.
    assertThat(structure.reading(kink)).isCloseTo(-turn, within(1e-12));
    assertThat(structure.reading(sag)).isCloseTo(turn * (1000 - 375), within(1e-9));
  }

  // Angle 50 x 50 x 6 with sharp corners: A 564, centroid 14.47 from the heel,
  // I = (6 50^3 + 44 6^3)/3 - A e^2 by Steiner; channel and I section by subtraction.
  @Test
  void sectionPropertiesByHand() {
    SectionStiffness angle = SectionShapes.angle(50, 50, 6);
    double e = (300 * 25 + 264 * 3) / 564.0;
    assertThat(angle.areaMm2()).isEqualTo(564);
    assertThat(angle.iyMm4()).isCloseTo((6 * 125_000 + 44 * 216) / 3.0 - 564 * e * e, within(1e-6));
    double product = 300 * (25 - e) * (3 - e) + 264 * (3 - e) * (28 - e);
    assertThat(angle.iyzMm4()).isCloseTo(product, within(1e-6));
    SectionStiffness channel = SectionShapes.channel(100, 50, 6, 8.5);
    assertThat(channel.iyMm4()).isCloseTo((50 * 1e6 - 44 * Math.pow(83, 3)) / 12, within(1e-3));
    assertThat(channel.shearCentreYMm()).isNegative();
    SectionStiffness beam = SectionShapes.i(200, 100, 5.6, 8.5);
    assertThat(beam.iyMm4()).isCloseTo((100 * 8e6 - 94.4 * Math.pow(183, 3)) / 12, within(1e-3));
    // Torsion of a square bar: 0.1406 a4 (Timoshenko and Goodier); the approximation holds to 0.2
    // %.
    assertThat(SectionShapes.rectangle(10, 10).torsionMm4()).isCloseTo(1406, within(3.0));
    // Of a 2:1 bar 0.229 a b3.
    assertThat(SectionShapes.rectangle(20, 10).torsionMm4()).isCloseTo(4580, within(15.0));
    assertThat(SectionShapes.roundTube(60, 5).torsionMm4())
        .isCloseTo(Math.PI / 32 * (Math.pow(60, 4) - Math.pow(50, 4)), within(1e-6));
  }

  private static SectionStiffness slenderStiffAxially(SectionStiffness s) {
    return new SectionStiffness(
        1e9, s.iyMm4(), s.izMm4(), s.iyzMm4(), s.torsionMm4(), 1e12, 1e12, 0, 0);
  }
}
