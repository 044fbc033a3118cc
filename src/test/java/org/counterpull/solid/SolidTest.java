package org.counterpull.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Face;
import org.counterpull.space.Frame;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Channel;
import org.counterpull.stock.Flat;
import org.counterpull.stock.ISection;
import org.counterpull.stock.Plate;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.stock.SquareBar;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.junit.jupiter.api.Test;

/** Solids of parts: volumes, insides, faces, pieces and distances. */
class SolidTest {
  private static final PartMaterial STEEL =
      new PartMaterial(
          "unknown", PartMaterial.Certainty.UNKNOWN, Optional.empty(), Optional.empty());

  private static final List<Stock> STOCKS =
      List.of(
          new Flat(60, 10),
          new Plate(OptionalDouble.of(200), 8),
          new Angle(50, 40, 6, 0),
          new Channel(100, 50, 5, 8, 0),
          new ISection(100, 55, 4, 6, 0),
          new RectangularTube(60, 40, 4, 0),
          new SquareBar(20),
          new RoundBar(25),
          new RoundTube(48.3, 3.2));

  private static Part part(
      String name, Stock stock, double length, Vector3D at, EndCut right, List<Vector2D> outline) {
    Frame frame = Frame.of(at, Vector3D.PLUS_I, Vector3D.PLUS_K);
    return new Part(
        name, stock, length, frame, EndCut.SQUARE, right, outline, STEEL, false, Optional.empty());
  }

  private static Solid solid(Stock stock, double length, Vector3D at) {
    return Solid.of(part("p", stock, length, at, EndCut.SQUARE, List.of()));
  }

  /** Section area by the stock's own formula, which knows nothing of this package. */
  @Test
  void volumeIsSectionAreaTimesLength() {
    for (Stock stock : STOCKS) {
      double expected = stock.areaMm2() * 250;
      assertThat(solid(stock, 250, Vector3D.ZERO).volumeMm3())
          .as(stock.describe())
          .isCloseTo(expected, within(1e-9 * expected));
    }
  }

  /** Cut 45 degrees off a 60 wide flat: 30 mm of mean length goes. */
  @Test
  void mitreTakesHalfTheWidthOffTheVolume() {
    EndCut cut = new EndCut(45, Optional.of(Face.FRONT));
    Part flat = part("p", new Flat(60, 10), 200, Vector3D.ZERO, cut, List.of());
    assertThat(Solid.of(flat).volumeMm3()).isCloseTo(600 * 170, within(1e-6));
    assertThat(Solid.of(flat).contains(new Vector3D(195, -29, 0), 0)).isTrue();
    assertThat(Solid.of(flat).contains(new Vector3D(195, 29, 0), 0)).isFalse();
  }

  @Test
  void mitresThatMeetAreRefused() {
    EndCut cut = new EndCut(75, Optional.of(Face.FRONT));
    Part flat = part("p", new Flat(60, 10), 100, Vector3D.ZERO, cut, List.of());
    assertThatThrownBy(() -> Solid.of(flat))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("meet within the part");
  }

  /** Outward normals times areas of a closed surface sum to zero; each face lies on the surface. */
  @Test
  void facesLookOutwards() {
    for (Stock stock : STOCKS) {
      Solid solid = solid(stock, 250, new Vector3D(3, 4, 5));
      for (FlatFace face : solid.faces()) {
        if (face.edges().get(0) instanceof FlatFace.StraightEdge edge) {
          Vector3D along = edge.to().subtract(edge.from());
          Vector3D inward = face.normal().crossProduct(along.normalize());
          Vector3D middle = new Vector3D(0.5, edge.from(), 0.5, edge.to()).add(0.5, inward);
          assertThat(solid.contains(middle.subtract(face.normal().scalarMultiply(0.1)), 0))
              .isTrue();
          assertThat(solid.contains(middle.add(face.normal().scalarMultiply(0.1)), 0)).isFalse();
        }
      }
    }
  }

  @Test
  void convexPiecesFillTheSectionOfRandomPlates() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      int corners = 4 + random.nextInt(10);
      List<Vector2D> outline = new ArrayList<>();
      for (int k = 0; k < corners; k++) {
        double angle = 2 * Math.PI * (k + 0.8 * random.nextDouble()) / corners;
        double radius = 30 + 100 * random.nextDouble();
        outline.add(new Vector2D(radius * Math.cos(angle), radius * Math.sin(angle)));
      }
      Plate stock = new Plate(OptionalDouble.empty(), 8);
      Solid plate = Solid.of(part("p", stock, 200, Vector3D.ZERO, EndCut.SQUARE, outline));
      double pieces = plate.section().convexPieces().stream().mapToDouble(PlanePolygon::area).sum();
      assertThat(pieces).isCloseTo(plate.section().areaMm2(), within(1e-6));
      assertThat(plate.volumeMm3()).isCloseTo(8 * pieces, within(1e-5));
    }
  }

  @Test
  void distanceOfBoxesIsBetweenTheirNearestCorners() {
    Solid a = solid(new SquareBar(20), 100, Vector3D.ZERO);
    Solid b = solid(new SquareBar(20), 100, new Vector3D(103, 24, 32));
    Separation.Move move = Separation.apart(a, b);
    assertThat(move.mm()).isCloseTo(13, within(1e-9));
    assertThat(move.direction().distance(new Vector3D(3, 4, 12).scalarMultiply(1 / 13.0)))
        .isLessThan(1e-9);
    assertThat(a.distance(new Vector3D(103, 14, 22))).isCloseTo(13, within(1e-9));
  }

  @Test
  void depthOfBoxesIsTheirLeastOverlap() {
    Solid a = solid(new SquareBar(20), 100, Vector3D.ZERO);
    Solid b = solid(new SquareBar(20), 100, new Vector3D(50, 12, 17));
    Separation.Move move = Separation.overlap(a, b, 0.5).orElseThrow();
    assertThat(move.mm()).isCloseTo(3, within(1e-9));
    assertThat(move.direction().distance(Vector3D.MINUS_K)).isLessThan(1e-9);
  }

  /** Moving apart by the depth parts two convex parts; by a little less does not. */
  @Test
  void movingByTheDepthPartsConvexParts() {
    Random random = new Random(5);
    int overlapping = 0;
    for (int i = 0; i < 200; i++) {
      Solid a = solid(new Flat(60, 20), 100, Vector3D.ZERO);
      Frame frame =
          Frame.of(
              new Vector3D(100 * random.nextDouble(), 40 * random.nextDouble(), 10),
              new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()),
              new Vector3D(0.1, 0.2, 1));
      Part other =
          new Part(
              "q",
              new SquareBar(30),
              80,
              frame,
              EndCut.SQUARE,
              EndCut.SQUARE,
              List.of(),
              STEEL,
              false,
              Optional.empty());
      Optional<Separation.Move> move = Separation.overlap(a, Solid.of(other), 1);
      if (move.isPresent()) {
        overlapping++;
        Vector3D by = move.get().direction();
        Solid off = solid(new Flat(60, 20), 100, by.scalarMultiply(move.get().mm() + 1e-6));
        Solid less = solid(new Flat(60, 20), 100, by.scalarMultiply(move.get().mm() - 0.01));
        assertThat(Separation.overlap(off, Solid.of(other), 0)).isEmpty();
        assertThat(Separation.overlap(less, Solid.of(other), 0)).isPresent();
      }
    }
    assertThat(overlapping).isGreaterThan(50);
  }
}
