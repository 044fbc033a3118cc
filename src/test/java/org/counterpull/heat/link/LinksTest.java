package org.counterpull.heat.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.CartesianGrid;
import org.counterpull.heat.block.CylinderGrid;
import org.counterpull.heat.block.Frame;
import org.counterpull.heat.block.Grading;
import org.counterpull.heat.block.Side;
import org.counterpull.heat.block.Vec3;
import org.counterpull.heat.material.ThermalMaterial;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class LinksTest {
  private static final ThermalMaterial METAL = ThermalMaterial.constant("metal", 40, 7850, 650);

  private static Block plate(String name, Frame frame, double x, double y, double z, double cell) {
    return new Block(
        name,
        METAL,
        frame,
        new CartesianGrid(
            Grading.uniform(0, x, cell), Grading.uniform(0, y, cell), Grading.uniform(0, z, cell)));
  }

  // Exact polygon calculation by a general geometry library, over random placements.
  @Test
  void overlapOfTurnedPlatesEqualsExactPolygons() {
    Random random = new Random(7);
    Block below = plate("below", Frame.WORLD, 60, 40, 6, 5);
    Polygon base = rectangle(Frame.WORLD, 60, 40);
    for (int n = 0; n < 40; n++) {
      double turn = random.nextDouble() * 2 * Math.PI;
      Vec3 at = new Vec3(random.nextDouble() * 50, random.nextDouble() * 30, 6);
      Frame frame =
          Frame.of(
              at,
              new Vec3(Math.cos(turn), Math.sin(turn), 0),
              new Vec3(-Math.sin(turn), Math.cos(turn), 0));
      Block above = plate("above", frame, 25, 15, 4, 3.7);
      Link link = Links.fitted(above, Side.Z_LOW, below, Side.Z_HIGH, 1000, 0.1);
      double exact = rectangle(frame, 25, 15).intersection(base).getArea();
      assertThat(link.areaMm2()).isCloseTo(exact, within(1e-6));
    }
  }

  private static Polygon rectangle(Frame frame, double x, double y) {
    Vec3[] corners = {
      Vec3.ZERO, new Vec3(x, 0, 0), new Vec3(x, y, 0), new Vec3(0, y, 0), Vec3.ZERO
    };
    Coordinate[] ring = new Coordinate[5];
    for (int n = 0; n < 5; n++) {
      Vec3 world = frame.toWorld(corners[n]);
      ring[n] = new Coordinate(world.x(), world.y());
    }
    return new GeometryFactory().createPolygon(ring);
  }

  // Sleeve 70 x 5 over tube 60 x 5, 40 long: the fit is 2 pi 30 40 = 7540 mm2; chords cost under 1
  // %.
  @Test
  void sleeveCoversItsTubeWithOtherSectors() {
    Block tube = round("tube", 25, 30, 24, 100, Frame.WORLD);
    Block sleeve = round("sleeve", 30, 35, 32, 40, Frame.withZ(new Vec3(0, 0, 30), Vec3.Z));
    Link link = Links.fitted(sleeve, Side.INNER, tube, Side.OUTER, 1000, 0.5);
    assertThat(link.areaMm2()).isCloseTo(2 * Math.PI * 30 * 40, within(0.01 * 7540));
  }

  private static Block round(
      String name, double inner, double outer, int sectors, double length, Frame frame) {
    return new Block(
        name,
        METAL,
        frame,
        new CylinderGrid(
            Grading.uniform(inner, outer, 2.5), sectors, Grading.uniform(0, length, 7)));
  }

  // Air at 20 C: 0.0257 W/mK (handbook value 0.0257), over 0.5 mm 51 W/m2K; radiation of two faces
  // of 0.8 adds 4 x 5.67e-8 x 293^3 / 1.5 = 3.8.
  @Test
  void gapConductsThroughAirAndRadiates() {
    double resistance = new LinkLaw.AirGap(0.8, 0.8).resistanceMm2KPerW(0.5, 20, 20, 0.04);
    assertThat(1e6 / resistance).isCloseTo(51.4 + 3.8, within(0.6));
  }

  @Test
  void weldMetalSpansItsThroatAndLength() {
    Block base = plate("base", Frame.WORLD, 60, 40, 6, 3);
    Block web = plate("web", Frame.of(new Vec3(0, 17, 6), Vec3.X, Vec3.Y), 60, 6, 30, 3);
    Link link = Links.weld(base, web, new Vec3(10, 17, 6), new Vec3(35, 17, 6), 4, 5, 12);
    assertThat(link.areaMm2()).isCloseTo(4 * 25, within(1e-9));
    assertThat(link.fromS()).isEqualTo(12);
    assertThat(link.pairs()).allSatisfy(p -> assertThat(p.distanceMm()).isEqualTo(5));
  }

  @Test
  void facesThatDoNotMeetAreRefused() {
    Block below = plate("below", Frame.WORLD, 60, 40, 6, 5);
    Block apart = plate("apart", Frame.withZ(new Vec3(0, 0, 9), Vec3.Z), 20, 20, 6, 5);
    assertThatThrownBy(() -> Links.fitted(apart, Side.Z_LOW, below, Side.Z_HIGH, 1000, 0.1))
        .hasMessageContaining("Z_LOW of apart and Z_HIGH of below do not face each other");
  }
}
