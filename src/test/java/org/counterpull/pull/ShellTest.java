package org.counterpull.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The shell triangle's patch tests, textbook plates and tubes, condensation. */
class ShellTest {
  private static final ElasticMaterial STEEL = ElasticMaterial.STEEL;
  private static final double E = 206_000;
  private static final double NU = 0.3;

  // Six eigenvalues vanish (rigid motion), twelve don't.
  @Test
  void triangleHasNoSpuriousModes() {
    ShellTriangle triangle =
        new ShellTriangle(
            new Vector3D(1, 2, 3), new Vector3D(9, 4, 2), new Vector3D(3, 8, 7), 1.5, STEEL);
    double[] values =
        new EigenDecomposition(new Array2DRowRealMatrix(triangle.stiffness())).getRealEigenvalues();
    double most = values[0];
    assertThat(IntStream.range(0, 18).filter(i -> values[i] > 1e-6 * most).count()).isEqualTo(12);
    assertThat(Math.abs(values[17])).isLessThan(1e-10 * most);
  }

  // Patch test: an irregular patch under every state of constant strain or curvature, imposed as
  // forces of the state on the patch's outline, gives that state exactly. Here: forces K u of a
  // linear
  // or quadratic field vanish at each inner node.
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void patchTest(int state) {
    ShellMesh mesh = patch(new Random(5));
    double[] field = new double[6 * mesh.nodes().size()];
    for (int n = 0; n < mesh.nodes().size(); n++) {
      System.arraycopy(constantState(state, mesh.nodes().get(n)), 0, field, 6 * n, 6);
    }
    double[] forces = new double[field.length];
    double scale = 0;
    for (int[] corners : mesh.triangles()) {
      double[][] k = triangle(mesh, corners).stiffness();
      for (int i = 0; i < 18; i++) {
        for (int j = 0; j < 18; j++) {
          double force = k[i][j] * field[6 * corners[j / 6] + j % 6];
          forces[6 * corners[i / 6] + i % 6] += force;
          scale = Math.max(scale, Math.abs(force));
        }
      }
    }
    for (int n = 0; n < mesh.nodes().size(); n++) {
      Vector3D p = mesh.nodes().get(n);
      boolean inner = p.getX() > 1 && p.getX() < 39 && p.getY() > 1 && p.getY() < 29;
      for (int c = 0; inner && c < 6; c++) {
        assertThat(Math.abs(forces[6 * n + c])).isLessThan(1e-10 * scale);
      }
    }
  }

  private static double[] constantState(int state, Vector3D p) {
    double x = p.getX();
    double y = p.getY();
    return switch (state) {
      case 0 -> new double[] {x, 0, 0, 0, 0, 0};
      case 1 -> new double[] {0, y, 0, 0, 0, 0};
      // Shear u = y: the drilling turn of the continuum is -1/2.
      case 2 -> new double[] {y, 0, 0, 0, 0, -0.5};
      case 3 -> new double[] {0, 0, x * x / 2, 0, -x, 0};
      case 4 -> new double[] {0, 0, y * y / 2, y, 0, 0};
      default -> new double[] {0, 0, x * y, x, -y, 0};
    };
  }

  private static ShellMesh patch(Random random) {
    return ShellMesh.grid(
        (i, j) -> {
          boolean inner = i > 0 && i < 4 && j > 0 && j < 3;
          double dx = inner ? 3 * random.nextDouble() : 0;
          double dy = inner ? 3 * random.nextDouble() : 0;
          return new Vector3D(10 * i + dx, 10 * j + dy, 0);
        },
        4,
        3,
        2);
  }

  private static ShellTriangle triangle(ShellMesh mesh, int[] corners) {
    return new ShellTriangle(
        mesh.nodes().get(corners[0]),
        mesh.nodes().get(corners[1]),
        mesh.nodes().get(corners[2]),
        mesh.thicknessMm(),
        STEEL);
  }

  // Pure bending in its plane, u = -k x y, v = k (x2 + nu y2) / 2: two triangles store exactly the
  // energy of the rectangle for any aspect ratio (Felippa 2003: energy ratio one).
  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.5, 1, 2, 4, 20})
  void inPlaneBendingEnergyIsExact(double aspect) {
    double b = 10;
    double a = aspect * b;
    double h = 2;
    Vector3D[] p = {
      new Vector3D(-a / 2, -b / 2, 0),
      new Vector3D(a / 2, -b / 2, 0),
      new Vector3D(a / 2, b / 2, 0),
      new Vector3D(-a / 2, b / 2, 0)
    };
    double exact = 0.5 * E * h * Math.pow(b, 3) / 12 * 1e-6 * a;
    double rising = energy(h, p[0], p[1], p[2]) + energy(h, p[0], p[2], p[3]);
    double falling = energy(h, p[0], p[1], p[3]) + energy(h, p[1], p[2], p[3]);
    assertThat(rising).isCloseTo(exact, within(1e-11 * exact));
    assertThat(falling).isCloseTo(exact, within(1e-11 * exact));
  }

  private static double energy(double h, Vector3D... corners) {
    double[][] k = new ShellTriangle(corners[0], corners[1], corners[2], h, STEEL).stiffness();
    double[] u = new double[18];
    for (int i = 0; i < 3; i++) {
      double x = corners[i].getX();
      double y = corners[i].getY();
      u[6 * i] = -1e-3 * x * y;
      u[6 * i + 1] = 1e-3 * (x * x + NU * y * y) / 2;
      u[6 * i + 5] = 1e-3 * x;
    }
    double sum = 0;
    for (int i = 0; i < 18; i++) {
      for (int j = 0; j < 18; j++) {
        sum += 0.5 * u[i] * k[i][j] * u[j];
      }
    }
    return sum;
  }

  private static ShellMesh flat(double length, double width, int columns, int rows, double h) {
    return ShellMesh.grid(
        (i, j) -> new Vector3D(length * i / columns, width * j / rows, 0), columns, rows, h);
  }

  // Simply supported square plate, force in its middle: w = 0.01160 P a2 / D (Timoshenko and
  // Woinowsky-Krieger); edges held down only. Discrete Kirchhoff triangles converge to it.
  @Test
  void squarePlateUnderCentralForce() {
    assertThat(squarePlateCoefficient()).isCloseTo(0.01160, within(0.01 * 0.01160));
  }

  /** The middle's deflection over P a2 / D. */
  static double squarePlateCoefficient() {
    double a = 200;
    double h = 2;
    int n = 16;
    ShellMesh mesh = flat(a, a, n, n, h);
    List<Integer> exposed = new ArrayList<>();
    exposed.add(n / 2 * (n + 1) + n / 2);
    for (int i = 0; i < mesh.nodes().size(); i++) {
      Vector3D p = mesh.nodes().get(i);
      boolean edge =
          p.getX() < 1e-9 || p.getY() < 1e-9 || p.getX() > a - 1e-9 || p.getY() > a - 1e-9;
      if (edge) {
        exposed.add(i);
      }
    }
    Assembly assembly = new Assembly();
    int body = assembly.body(new ShellBody(mesh, STEEL, exposed));
    List<Integer> edges = new ArrayList<>();
    for (int i = 1; i < exposed.size(); i++) {
      edges.add(assembly.groundLink(Shapes.at(assembly, body, i), Shapes.AXES));
    }
    Coordinate middle = assembly.displacement(Shapes.at(assembly, body, 0), Vector3D.PLUS_K);
    int w = assembly.reading(middle);
    int load = assembly.load(Load.force(middle, 100));
    Structure structure = new Structure(assembly, 1);
    for (int edge : edges) {
      structure.join(edge, new SpringStiffness(0, 0, Double.POSITIVE_INFINITY, 0, 0, 0));
    }
    structure.apply(load, 1, 0);
    double rigidity = E * Math.pow(h, 3) / (12 * (1 - NU * NU));
    return structure.reading(w) * rigidity / (100 * a * a);
  }

  // A strip that shrinks across a free plate: the far edge comes in by S and turns by phi.
  @Test
  void shrunkStripTurnsTheFreePlate() {
    ShellMesh mesh = flat(120, 40, 6, 2, 5);
    ShellBody plate = new ShellBody(mesh, STEEL, List.of(0, 6, 20));
    List<Integer> strip = new ArrayList<>();
    for (int t = 0; t < mesh.triangles().size(); t++) {
      int[] c = mesh.triangles().get(t);
      double middle = 0;
      for (int node : c) {
        middle += mesh.nodes().get(node).getX() / 3;
      }
      if (middle > 40 && middle < 60) {
        strip.add(t);
      }
    }
    double[] u =
        plate.inherentStrain(strip, Vector3D.PLUS_I, -0.2 / 20, -0.02 / 20).displacements();
    for (int node : new int[] {1, 2}) {
      // Node 20 is the far upper corner; both far corners shift alike, apart from the strip's
      // cross-contraction that the plate beside it holds back.
      assertThat(u[6 * node]).isCloseTo(-0.2, within(0.012));
      // The upper face shrinks, so the far end rises: w' = -(turn about y).
      assertThat(u[6 * node + 4]).isCloseTo(-0.02, within(0.002));
      assertThat(u[6 * node + 2]).isCloseTo(0.02 * 70, within(0.14));
    }
  }

  // Long tube clamped as a cantilever: bending as a beam of round tube, F L3/(3EI) + F L/(G As).
  @Test
  void tubeBendsAsABeam() {
    // A 16-sided polygon has 0.974 to 0.98 of the circle's second moment; clamped rims stiffen a
    // bit.
    assertThat(tubeOverBeam()).isCloseTo(1, within(0.03));
  }

  /** Deflection of a tube of shells over that of a beam of round tube. */
  static double tubeOverBeam() {
    double radius = 30;
    double wall = 4;
    double length = 600;
    int around = 16;
    int along = 20;
    List<Vector3D> nodes = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i <= along; i++) {
      for (int k = 0; k < around; k++) {
        double angle = 2 * Math.PI * k / around;
        nodes.add(
            new Vector3D(length * i / along, radius * Math.cos(angle), radius * Math.sin(angle)));
      }
    }
    for (int i = 0; i < along; i++) {
      for (int k = 0; k < around; k++) {
        int a = i * around + k;
        int b = i * around + (k + 1) % around;
        triangles.add(new int[] {a, b, a + around});
        triangles.add(new int[] {b, b + around, a + around});
      }
    }
    List<Integer> exposed = new ArrayList<>();
    for (int k = 0; k < around; k++) {
      exposed.add(k);
    }
    for (int k = 0; k < around; k++) {
      exposed.add(along * around + k);
    }
    Assembly assembly = new Assembly();
    int tube = assembly.body(new ShellBody(new ShellMesh(nodes, triangles, wall), STEEL, exposed));
    int plug = assembly.body(new RigidBody(new Vector3D(length, 0, 0)));
    List<Integer> links = new ArrayList<>();
    for (int k = 0; k < around; k++) {
      links.add(assembly.groundLink(Shapes.at(assembly, tube, k), Shapes.AXES));
      MaterialPoint rim = Shapes.at(assembly, tube, around + k);
      links.add(assembly.link(rim, new MaterialPoint(plug, 0, rim.position()), Shapes.AXES));
    }
    Coordinate tip = assembly.displacement(Shapes.at(assembly, plug, 0), Vector3D.PLUS_K);
    int reading = assembly.reading(tip);
    int load = assembly.load(Load.force(tip, 500));
    Structure structure = new Structure(assembly, 1);
    links.forEach(link -> structure.join(link, SpringStiffness.RIGID));
    structure.apply(load, 1, 0);
    SectionStiffness s = SectionShapes.roundTube(64, 4);
    double expected =
        500 * Math.pow(length, 3) / (3 * E * s.iyMm4())
            + 500 * length / (STEEL.shearModulusMPa() * s.shearAreaZMm2());
    return structure.reading(reading) / expected;
  }

  // Condensed plates linked by springs against one mesh that holds both and is solved in full.
  @Test
  void condensationAgainstTheFullSolve() {
    assertThat(condensedOverFull()).isCloseTo(1, within(1e-9));
  }

  /** A reading of condensed plates over that of one mesh that holds both. */
  static double condensedOverFull() {
    ShellMesh left = flat(60, 40, 6, 4, 3);
    ShellMesh right =
        ShellMesh.grid((i, j) -> new Vector3D(60 + 10.0 * i, 10.0 * j, 4.0 * i), 6, 4, 3);
    ShellMesh whole = joined(left, right);
    Assembly parts = new Assembly();
    List<Integer> seamLeft = List.of(0, 6, 13, 20, 27, 34);
    List<Integer> seamRight = List.of(34, 0, 7, 14, 21, 28);
    int a = parts.body(new ShellBody(left, STEEL, seamLeft));
    int b = parts.body(new ShellBody(right, STEEL, seamRight));
    List<Integer> seam = new ArrayList<>();
    for (int i = 1; i <= 5; i++) {
      seam.add(parts.link(Shapes.at(parts, a, i), Shapes.at(parts, b, i), Shapes.AXES));
    }
    // A pair of forces along the line between both points is in balance.
    Vector3D direction = right.nodes().get(34).subtract(left.nodes().get(0)).normalize();
    Coordinate spread = parts.opening(Shapes.at(parts, a, 0), Shapes.at(parts, b, 0), direction);
    int load = parts.load(Load.force(spread, 10));
    int reading = parts.reading(spread);
    Structure condensed = new Structure(parts, 1);
    seam.forEach(link -> condensed.join(link, SpringStiffness.RIGID));
    condensed.apply(load, 1, 0);

    Assembly one = new Assembly();
    int full = one.body(new ShellBody(whole, STEEL, List.of(0, whole.nodes().size() - 1)));
    Coordinate same = one.opening(Shapes.at(one, full, 0), Shapes.at(one, full, 1), direction);
    int fullLoad = one.load(Load.force(same, 10));
    int fullReading = one.reading(same);
    Structure direct = new Structure(one, 1);
    assertThat(condensed.looseMotions()).isEqualTo(6);
    assertThat(direct.looseMotions()).isEqualTo(6);
    direct.apply(fullLoad, 1, 0);
    return condensed.reading(reading) / direct.reading(fullReading);
  }

  private static ShellMesh joined(ShellMesh left, ShellMesh right) {
    List<Vector3D> nodes = new ArrayList<>(left.nodes());
    int[] number = new int[right.nodes().size()];
    for (int i = 0; i < number.length; i++) {
      Vector3D p = right.nodes().get(i);
      int found = -1;
      for (int k = 0; k < left.nodes().size(); k++) {
        found = left.nodes().get(k).distance(p) < 1e-9 ? k : found;
      }
      number[i] = found < 0 ? nodes.size() : found;
      if (found < 0) {
        nodes.add(p);
      }
    }
    List<int[]> triangles = new ArrayList<>(left.triangles());
    for (int[] t : right.triangles()) {
      triangles.add(new int[] {number[t[0]], number[t[1]], number[t[2]]});
    }
    return new ShellMesh(nodes, triangles, left.thicknessMm());
  }

  // Turned in space, a plate's flexibility turns with it.
  @Test
  void turnedPlateTurnedFlexibility() {
    Rotation turn = new Rotation(new Vector3D(1, -2, 0.4), 0.9, RotationConvention.VECTOR_OPERATOR);
    ShellMesh flat = flat(60, 40, 6, 4, 3);
    ShellMesh turned =
        new ShellMesh(flat.nodes().stream().map(turn::applyTo).toList(), flat.triangles(), 3);
    double[] straight = column(flat, Vector3D.PLUS_K);
    double[] tilted = column(turned, turn.applyTo(Vector3D.PLUS_K));
    Vector3D expected = turn.applyTo(new Vector3D(straight[0], straight[1], straight[2]));
    assertThat(new Vector3D(tilted[0], tilted[1], tilted[2]).distance(expected))
        .isLessThan(1e-9 * expected.getNorm());
  }

  private static double[] column(ShellMesh mesh, Vector3D force) {
    double[][] f = new ShellBody(mesh, STEEL, List.of(0, 34)).flexibility();
    double[] moved = new double[3];
    for (int i = 0; i < 3; i++) {
      moved[i] =
          f[6 + i][6] * force.getX() + f[6 + i][7] * force.getY() + f[6 + i][8] * force.getZ();
    }
    return moved;
  }
}
