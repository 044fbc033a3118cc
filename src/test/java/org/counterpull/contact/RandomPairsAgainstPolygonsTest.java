package org.counterpull.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.counterpull.contact.Bench.joint;
import static org.counterpull.contact.Bench.moved;
import static org.counterpull.contact.Bench.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Channel;
import org.counterpull.stock.Flat;
import org.counterpull.stock.ISection;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Part;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Parts set on each other at random, against polygons cut by a general-purpose geometry library.
 *
 * <p>Both parts' faces are written down here as polygons from their dimensions alone. Every line is
 * kept, however short, so that the lines together are the outline of what the polygons share.
 */
class RandomPairsAgainstPolygonsTest {
  private static final GeometryFactory JTS = new GeometryFactory();

  /** A circle of so many sides has 4e-7 less area and 1e-7 less length than a round one. */
  private static final int CIRCLE_SIDES = 4096;

  private static final ContactFinder EVERY_LINE =
      new ContactFinder(new FitUp(1, 1.5, 0, 0.5), new Torch(30, 20, 0));

  /** A part and the face of it that is set down or stood upon, in the face's own plane. */
  private record Placed(Part part, Geometry face) {}

  /** What stands with its left end on the plane, given where and how. */
  private record Standing(Stock stock, Geometry section) {}

  @Test
  void polygonalEndsOnFlatsPlatesAnglesTubesAndSections() {
    Random random = new Random(20260101);
    int touching = 0;
    for (int i = 0; i < 600; i++) {
      Placed base = base(random, i % 6);
      touching += standing(random, base, polygonal(random, i % 5), 1e-9);
    }
    assertThat(touching).isBetween(400, 600);
  }

  @Test
  void roundBarsAndTubesStandingOnFaces() {
    Random random = new Random(20260102);
    int touching = 0;
    for (int i = 0; i < 150; i++) {
      touching += standing(random, base(random, i % 6), round(random, i % 2 == 0), 2e-6);
    }
    assertThat(touching).isBetween(100, 150);
  }

  @Test
  void roundBarsLyingOnFaces() {
    Random random = new Random(20260103);
    int touching = 0;
    for (int i = 0; i < 150; i++) {
      touching += lying(random, base(random, i % 6));
    }
    assertThat(touching).isBetween(100, 150);
  }

  private static int standing(Random random, Placed base, Standing standing, double relative) {
    Vector2D foot = foot(random, base.face());
    double turn = 2 * Math.PI * random.nextDouble();
    Vector3D across = new Vector3D(Math.cos(turn), Math.sin(turn), 0);
    Vector3D up = new Vector3D(-Math.sin(turn), Math.cos(turn), 0);
    double gap = random.nextInt(3) * 0.3;
    Part part =
        part(
            "a",
            standing.stock(),
            70,
            new Vector3D(foot.getX(), foot.getY(), gap),
            Vector3D.PLUS_K,
            up);
    assertThat(part.frame().y().distance(across)).isLessThan(1e-12);
    Geometry print = laid(standing.section(), foot, turn);
    Geometry shared = base.face().intersection(print);
    Optional<Contact> contact = find(random, part, base.part());
    if (shared.getArea() < 0.01) {
      return 0;
    }
    double area = contact.orElseThrow().areaMm2();
    assertThat(area).isCloseTo(shared.getArea(), within(relative * print.getArea()));
    assertThat(Bench.length(contact.get()))
        .isCloseTo(shared.getLength(), within(relative * 100 + relative * print.getLength()));
    assertThat(contact.get().gapMm()).isCloseTo(gap, within(1e-9));
    return 1;
  }

  /**
   * The strip in which a round bar of radius R is within 1 mm of the face is 2 sqrt(2 R - 1) wide;
   * the grooves' lines are as long as the strip's sides within the face.
   */
  private static int lying(Random random, Placed base) {
    double radius = 5 + 40 * random.nextDouble();
    double half = Math.sqrt(2 * radius - 1);
    double length = 30 + 100 * random.nextDouble();
    double turn = 2 * Math.PI * random.nextDouble();
    Vector2D foot = foot(random, base.face());
    Vector3D along = new Vector3D(Math.cos(turn), Math.sin(turn), 0);
    Vector3D at = new Vector3D(foot.getX(), foot.getY(), radius);
    Part bar = part("a", new RoundBar(2 * radius), length, at, along, Vector3D.PLUS_K);
    Geometry strip = laid(polygon(0, -half, length, -half, length, half, 0, half), foot, turn);
    Geometry shared = base.face().intersection(strip);
    double grooves = 0;
    for (double side : new double[] {-half, half}) {
      Coordinate[] ends = {new Coordinate(0, side), new Coordinate(length, side)};
      Geometry line = laid(JTS.createLineString(ends), foot, turn);
      grooves += base.face().intersection(line).getLength();
    }
    Optional<Contact> contact = find(random, bar, base.part());
    if (shared.getArea() < 0.01) {
      return 0;
    }
    double flares =
        contact.orElseThrow().lines().stream()
            .filter(line -> line.shape() == WeldLine.Shape.FLARE_BEVEL)
            .mapToDouble(line -> line.path().lengthMm())
            .sum();
    assertThat(contact.get().areaMm2()).isCloseTo(shared.getArea(), within(1e-6));
    assertThat(flares).isCloseTo(grooves, within(1e-6));
    return 1;
  }

  /** The pair somewhere in space. */
  private static Optional<Contact> find(Random random, Part first, Part second) {
    Rotation turn = turn(random);
    Vector3D by =
        new Vector3D(1000 * random.nextDouble(), 1000 * random.nextDouble(), random.nextDouble());
    return EVERY_LINE.find(
        joint("j", "a", "b", 0, 0), moved(first, turn, by), moved(second, turn, by));
  }

  static Rotation turn(Random random) {
    return new Rotation(
        random.nextGaussian(),
        random.nextGaussian(),
        random.nextGaussian(),
        random.nextGaussian(),
        true);
  }

  private static Vector2D foot(Random random, Geometry face) {
    var box = face.getEnvelopeInternal();
    return new Vector2D(
        box.getMinX() + box.getWidth() * random.nextDouble(),
        box.getMinY() + box.getHeight() * random.nextDouble());
  }

  /** A base whose upper face lies in the plane z = 0. */
  private static Placed base(Random random, int kind) {
    double w = 60 + 80 * random.nextDouble();
    double length = 150 + 150 * random.nextDouble();
    Vector3D z = Vector3D.PLUS_K;
    Geometry rectangle = polygon(0, -w / 2, length, -w / 2, length, w / 2, 0, w / 2);
    Function<Stock, Part> lying =
        stock ->
            part("b", stock, length, new Vector3D(0, 0, -stock.upMm() / 2), Vector3D.PLUS_I, z);
    return switch (kind) {
      case 0 -> new Placed(lying.apply(new Flat(w, 10)), rectangle);
      case 1 -> new Placed(lying.apply(new RectangularTube(w, 50, 4, 0)), rectangle);
      case 2 -> new Placed(lying.apply(new Channel(100, w, 5, 8, 0)), rectangle);
      case 3 -> new Placed(lying.apply(new ISection(120, w, 5, 8, 0)), rectangle);
      case 4 -> {
        Angle angle = new Angle(70, w, 7, 0);
        Part upsideDown =
            part("b", angle, length, new Vector3D(0, 0, -35), Vector3D.PLUS_I, z.negate());
        yield new Placed(upsideDown, rectangle);
      }
      default -> plate(random);
    };
  }

  /** A star-shaped plate of 5 to 12 corners, mostly not convex. */
  private static Placed plate(Random random) {
    int corners = 5 + random.nextInt(8);
    List<Vector2D> outline = new ArrayList<>();
    double[] xy = new double[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * Math.PI * (i + 0.8 * random.nextDouble()) / corners;
      double radius = 40 + 110 * random.nextDouble();
      xy[2 * i] = radius * Math.cos(angle);
      xy[2 * i + 1] = radius * Math.sin(angle);
      outline.add(new Vector2D(xy[2 * i], xy[2 * i + 1]));
    }
    Frame frame =
        new Frame(new Vector3D(0, 0, -4), Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);
    return new Placed(Bench.plate("b", 8, frame, outline), polygon(xy));
  }

  private static Standing polygonal(Random random, int kind) {
    double b = 30 + 50 * random.nextDouble();
    double h = 30 + 50 * random.nextDouble();
    double t = 4 + 6 * random.nextDouble();
    Polygon box = rectangle(b, h);
    return switch (kind) {
      case 0 -> new Standing(new Flat(b, t), rectangle(b, t));
      case 1 ->
          new Standing(
              new Angle(h, b, t, 0),
              polygon(
                  -b / 2, -h / 2, b / 2, -h / 2, b / 2, t - h / 2, t - b / 2, t - h / 2, t - b / 2,
                  h / 2, -b / 2, h / 2));
      case 2 ->
          new Standing(
              new RectangularTube(b, h, t, 0), box.difference(rectangle(b - 2 * t, h - 2 * t)));
      case 3 -> {
        Geometry pocket = laid(rectangle(b, h - 2 * t), new Vector2D(t, 0), 0);
        yield new Standing(new Channel(h, b, t, t, 0), box.difference(pocket));
      }
      default -> {
        Geometry right = laid(rectangle(b, h - 2 * t), new Vector2D(b / 2 + t / 2, 0), 0);
        Geometry left = laid(rectangle(b, h - 2 * t), new Vector2D(-b / 2 - t / 2, 0), 0);
        yield new Standing(new ISection(h, b, t, t, 0), box.difference(right).difference(left));
      }
    };
  }

  private static Standing round(Random random, boolean bar) {
    double radius = 10 + 40 * random.nextDouble();
    double wall = 3 + 4 * random.nextDouble();
    return bar
        ? new Standing(new RoundBar(2 * radius), circle(radius))
        : new Standing(
            new RoundTube(2 * radius, wall), circle(radius).difference(circle(radius - wall)));
  }

  private static Polygon rectangle(double across, double up) {
    double b = across / 2;
    double h = up / 2;
    return polygon(-b, -h, b, -h, b, h, -b, h);
  }

  private static Polygon circle(double radius) {
    double[] xy = new double[2 * CIRCLE_SIDES];
    for (int i = 0; i < CIRCLE_SIDES; i++) {
      xy[2 * i] = radius * Math.cos(2 * Math.PI * i / CIRCLE_SIDES);
      xy[2 * i + 1] = radius * Math.sin(2 * Math.PI * i / CIRCLE_SIDES);
    }
    return polygon(xy);
  }

  private static Polygon polygon(double... xy) {
    Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
    for (int i = 0; i < ring.length; i++) {
      int k = 2 * (i % (ring.length - 1));
      ring[i] = new Coordinate(xy[k], xy[k + 1]);
    }
    return JTS.createPolygon(ring);
  }

  private static Geometry laid(Geometry shape, Vector2D at, double turn) {
    Geometry copy = shape.copy();
    copy.apply(
        (Coordinate c) -> {
          double x = c.x * Math.cos(turn) - c.y * Math.sin(turn);
          double y = c.x * Math.sin(turn) + c.y * Math.cos(turn);
          c.x = x + at.getX();
          c.y = y + at.getY();
        });
    copy.geometryChanged();
    return copy;
  }
}
