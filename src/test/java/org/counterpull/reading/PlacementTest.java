package org.counterpull.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Frames worked out by hand; a frame's origin is the middle of the section at the left end. */
class PlacementTest {
  private static final Vector3D X = Vector3D.PLUS_I;
  private static final Vector3D Y = Vector3D.PLUS_J;
  private static final Vector3D Z = Vector3D.PLUS_K;

  /** 600 long, 60 across (y 100 to 160), 10 high (z 20 to 30), x from 50 to 650. */
  private static final String BASE =
      "  base: {stock: flat 60 x 10, length: 600, start: [50, 100, 20], loose: true}\n";

  @TempDir Path folder;

  private Weldment read(String parts) throws IOException {
    Path file = folder.resolve("w.yaml");
    Files.writeString(file, "units: mm\nsteel: S275\nparts:\n" + BASE + parts);
    ReadResult result = WeldmentReader.read(file);
    assertThat(result).as("%s", result).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) result).weldment();
  }

  private Frame frame(String keys) throws IOException {
    return read("  part: {loose: true, " + keys + "}\n").part("part").frame();
  }

  private static void check(
      Frame frame, double x, double y, double z, Vector3D along, Vector3D back, Vector3D up) {
    near(frame.origin(), new Vector3D(x, y, z));
    near(frame.x(), along);
    near(frame.y(), back);
    near(frame.z(), up);
  }

  private static void near(Vector3D actual, Vector3D expected) {
    assertThat(actual.distance(expected)).as("%s, not %s", actual, expected).isLessThan(1e-9);
  }

  /** Origin = corner + (0, 60/2, 10/2). */
  @Test
  void startIsTheLeftFrontBottomCorner() throws IOException {
    check(read("").part("base").frame(), 50, 130, 25, X, Y, Z);
  }

  /** Along y, up x: back = up x along = x cross y = z. Origin = corner + 20 z + 4 x. */
  @Test
  void startWithDirections() throws IOException {
    check(
        frame("stock: flat 40 x 8, length: 100, start: [10, 20, 30], along: y, up: x"),
        14,
        20,
        50,
        Y,
        Z,
        X);
  }

  /** Along -x, up z: back = z cross -x = -y. Origin = corner - 25 y + 25 z. */
  @Test
  void turnedRound() throws IOException {
    check(
        frame("stock: angle 50 x 50 x 6, length: 100, start: [1190, 900, 0], along: -x"),
        1190,
        875,
        25,
        X.negate(),
        Y.negate(),
        Z);
  }

  /** Along z the top looks to -x: back = -x cross z = y. Origin = corner + 20 y - 4 x. */
  @Test
  void uprightPartsLookToTheLeft() throws IOException {
    check(
        frame("stock: flat 40 x 8, length: 100, start: [0, 0, 0], along: z"),
        -4,
        20,
        0,
        Z,
        Y,
        X.negate());
  }

  @Test
  void axisStartIsTheOriginItself() throws IOException {
    check(
        frame("stock: round bar 20, length: 100, axis start: [1, 2, 3], along: [0, 3, 4]"),
        1,
        2,
        3,
        new Vector3D(0, 0.6, 0.8),
        X.negate(),
        new Vector3D(0, -0.8, 0.6));
  }

  /** Length = root of 300^2 + 400^2 = 500; up z less its share along the part (0.6, 0, 0.8). */
  @Test
  void betweenTwoPoints() throws IOException {
    Part part =
        read("  part: {loose: true, stock: flat 40 x 8, axis from: [10, 0, 5],"
                + " axis to: [310, 0, 405]}\n")
            .part("part");
    assertThat(part.lengthMm()).isCloseTo(500, within(1e-9));
    check(part.frame(), 10, 0, 5, new Vector3D(0.6, 0, 0.8), Y, new Vector3D(-0.8, 0, 0.6));
  }

  /**
   * Lying on top, z = 30 + 8/2. Middle of the base is x 350, y 130. Along: from 350 - 50 to the
   * right. Across: length along y from 130 - 50; back = up cross along = z cross y = -x.
   */
  @Test
  void lying() throws IOException {
    String part = "stock: flat 40 x 8, length: 100, onto: base, face: top";
    check(frame(part), 300, 130, 34, X, Y, Z);
    check(frame(part + ", set: lying across"), 350, 80, 34, Y, X.negate(), Z);
  }

  /**
   * On edge on top: front on the face, so back looks up and z = 30 + 40/2. Along: top = x cross z =
   * -y. Across: length along y, top = y cross z = x.
   */
  @Test
  void onEdge() throws IOException {
    String part = "stock: flat 40 x 8, length: 100, onto: base, face: top, set: on edge ";
    check(frame(part + "along"), 300, 130, 50, X, Z, Y.negate());
    check(frame(part + "across"), 350, 80, 50, Y, Z, X);
  }

  /** Standing on top: the left end at z 30. Along: width along x, top = z cross x = y. */
  @Test
  void standing() throws IOException {
    String part = "stock: flat 40 x 8, length: 100, onto: base, face: top, set: standing ";
    check(frame(part + "along"), 350, 130, 30, Z, X, Y);
    check(frame(part + "across"), 350, 130, 30, Z, Y, X.negate());
  }

  /**
   * Standing along on each face; the part's left end lies on the face, in its middle: x 350, y 130,
   * z 25. On sides the width runs along x, on ends along y.
   */
  @Test
  void everyFace() throws IOException {
    String part = "stock: flat 40 x 8, length: 100, onto: base, set: standing along, face: ";
    check(frame(part + "top"), 350, 130, 30, Z, X, Y);
    check(frame(part + "bottom"), 350, 130, 20, Z.negate(), X, Y.negate());
    check(frame(part + "back"), 350, 160, 25, Y, X, Z.negate());
    check(frame(part + "front"), 350, 100, 25, Y.negate(), X, Z);
    check(frame(part + "right"), 650, 130, 25, X, Y, Z);
    check(frame(part + "left"), 50, 130, 25, X.negate(), Y, Z.negate());
  }

  /**
   * A plate 40 x 8, 100 long, lying on top; its left end is its middle less 50. The base runs from
   * x 50 to x 650.
   */
  @ParameterizedTest
  @CsvSource({
    "middle, 300", // 350 - 50
    "120 from left, 120", // 50 + 120 - 50
    "120 from right, 480", // 650 - 120 - 50
    "edge 120 from left, 170", // 50 + 120
    "edge 120 from right, 430", // 650 - 120 - 100
    "flush left, 50",
    "flush right, 550",
    "edge -10 from left, 40" // overhangs by 10
  })
  void placesAlong(String at, double x) throws IOException {
    Frame frame = frame("stock: flat 40 x 8, length: 100, onto: base, face: top, at: " + at);
    check(frame, x, 130, 34, X, Y, Z);
  }

  /** Across the top from y 100 to y 160; half the part's width is 20. */
  @ParameterizedTest
  @CsvSource({
    "25 from front, 125",
    "25 from back, 135",
    "edge 5 from front, 125",
    "flush front, 120",
    "flush back, 140"
  })
  void placesAcross(String across, double y) throws IOException {
    Frame frame =
        frame("stock: flat 40 x 8, length: 100, onto: base, face: top, across: " + across);
    check(frame, 300, y, 34, X, Y, Z);
  }

  /** On the right end: at runs along y (from front 100), across along z (from bottom 20). */
  @Test
  void placesOnAnEnd() throws IOException {
    check(
        frame(
            "stock: round bar 4, length: 30, onto: base, face: right, set: standing along,"
                + " at: 10 from front, across: 3 from bottom"),
        650,
        110,
        23,
        X,
        Y,
        Z);
  }

  /**
   * Turned by 90 degrees about z, lying along becomes lying across; by 30 the length points to (cos
   * 30, sin 30). The gap of 2 lifts by 2.
   */
  @Test
  void turnedAndRaised() throws IOException {
    String part = "stock: flat 40 x 8, length: 100, onto: base, face: top, gap: 2, turned: ";
    check(frame(part + "90"), 350, 80, 36, Y, X.negate(), Z);
    double c = Math.sqrt(3) / 2;
    check(
        frame(part + "30 deg"),
        350 - 50 * c,
        130 - 50 * 0.5,
        36,
        new Vector3D(c, 0.5, 0),
        new Vector3D(-0.5, c, 0),
        Z);
  }

  /**
   * Turned by 30 degrees, the near edge is the near corner of the box: half extent along x = 50 cos
   * 30 + 20 sin 30 = 53.301; the middle at 50 + 53.301.
   */
  @Test
  void nearEdgeOfATurnedPart() throws IOException {
    double half = 50 * Math.sqrt(3) / 2 + 20 * 0.5;
    Frame frame =
        frame("stock: flat 40 x 8, length: 100, onto: base, face: top, turned: 30, at: flush left");
    near(frame.outOf(new Vector3D(50, 0, 0)), new Vector3D(50 + half, 130, 34));
  }

  /** On a round part the tangent plane: top of a tube of 60 at z 30; a lug on it stands at z 30. */
  @Test
  void roundBase() throws IOException {
    Weldment weldment =
        read(
            "  tube: {stock: round tube 60 x 5, length: 380, axis start: [0, 0, 0], loose: true}\n"
                + "  lug: {stock: flat 40 x 10, length: 60, onto: tube, face: top,"
                + " set: standing along, at: 95 from right, loose: true}\n");
    check(weldment.part("lug").frame(), 285, 0, 30, Z, X, Y);
  }

  /** Set onto a part that is defined later, and that is itself set onto another. */
  @Test
  void anyOrderOfDefinition() throws IOException {
    Weldment weldment =
        read(
            "  c: {stock: square bar 10, length: 20, onto: b, face: top, loose: true}\n"
                + "  b: {stock: square bar 10, length: 20, onto: a, face: top, loose: true}\n"
                + "  a: {stock: square bar 10, length: 20, onto: base, face: top, loose: true}\n");
    check(weldment.part("a").frame(), 340, 130, 35, X, Y, Z);
    check(weldment.part("c").frame(), 340, 130, 55, X, Y, Z);
  }

  /** An outline has its box from 0 to 80 and 0 to 60; y is carried from the middle, 30. */
  @Test
  void outlines() throws IOException {
    Part part =
        read("  part: {loose: true, stock: plate 8, outline: [[0, 0], [80, 0], [0, 60], [0, 0]],"
                + " start: [5, 5, 5]}\n")
            .part("part");
    assertThat(part.lengthMm()).isEqualTo(80);
    assertThat(part.stock().acrossMm()).isEqualTo(60);
    assertThat(part.outline()).hasSize(3);
    assertThat(part.outline().get(2).getY()).isEqualTo(30);
    assertThat(part.outline().get(0).getY()).isEqualTo(-30);
    check(part.frame(), 5, 35, 9, X, Y, Z);
  }
}
