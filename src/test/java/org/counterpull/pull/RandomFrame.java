package org.counterpull.pull;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.space.Frame;

/** A seeded heap of bars with many places to link them, and readings between them. */
final class RandomFrame {
  static final int NODES = 4;
  static final ElasticMaterial MATERIAL = ElasticMaterial.STEEL;
  static final SectionStiffness SECTION = SectionShapes.rectangle(20, 40);

  final Assembly assembly = new Assembly();
  final List<List<Vector3D>> bars = new ArrayList<>();
  final List<Vector3D> ups = new ArrayList<>();
  final List<Integer> links = new ArrayList<>();
  final List<MaterialPoint> from = new ArrayList<>();
  final List<MaterialPoint> to = new ArrayList<>();
  final List<Frame> axes = new ArrayList<>();
  final List<Integer> readings = new ArrayList<>();
  final List<MaterialPoint[]> readingPoints = new ArrayList<>();
  final List<Vector3D> readingDirections = new ArrayList<>();

  /** How the whole is laid out in space: turned, mirrored or as it comes. */
  record Pose(UnaryOperator<Vector3D> place, boolean mirrored, int heldNode) {}

  static final Pose AS_IT_COMES = new Pose(v -> v, false, 0);

  RandomFrame(long seed, int barCount, int linkCount, Pose pose) {
    Random random = new Random(seed);
    for (int b = 0; b < barCount; b++) {
      Vector3D start = vector(random, 300);
      Vector3D along = vector(random, 1).normalize();
      Vector3D up = along.orthogonal();
      List<Vector3D> nodes = new ArrayList<>();
      for (int i = 0; i < NODES; i++) {
        nodes.add(pose.place().apply(start.add(100 * i, along)));
      }
      bars.add(nodes);
      ups.add(pose.place().apply(up));
      List<Integer> exposed = new ArrayList<>(List.of(0, 1, 2, 3));
      exposed.remove(Integer.valueOf(pose.heldNode()));
      exposed.add(0, pose.heldNode());
      List<BeamElement> elements =
          Collections.nCopies(NODES - 1, new BeamElement(SECTION, ups.get(b)));
      assembly.body(new BeamBody(nodes, elements, MATERIAL, exposed));
    }
    for (int l = 0; l < linkCount; l++) {
      addLink(random, l, barCount, pose);
    }
    for (int r = 0; r < 3; r++) {
      MaterialPoint a = point(random.nextInt(barCount), random.nextInt(NODES), pose);
      MaterialPoint b = point((a.body() + 1) % barCount, random.nextInt(NODES), pose);
      Vector3D direction = b.position().subtract(a.position()).normalize();
      readingPoints.add(new MaterialPoint[] {a, b});
      readingDirections.add(direction);
      readings.add(assembly.reading(assembly.opening(a, b, direction)));
    }
  }

  private void addLink(Random random, int l, int barCount, Pose pose) {
    // The first links join all bars into a chain; the others go anywhere.
    int bodyA = l < barCount - 1 ? l : random.nextInt(barCount);
    int bodyB = l < barCount - 1 ? l + 1 : (bodyA + 1 + random.nextInt(barCount - 1)) % barCount;
    MaterialPoint a = point(bodyA, random.nextInt(NODES), pose);
    MaterialPoint b = point(bodyB, random.nextInt(NODES), pose);
    Vector3D middle = a.position().add(b.position()).scalarMultiply(0.5);
    Vector3D along = vector(random, 1);
    Vector3D up = along.orthogonal();
    Frame frame = Frame.of(middle, pose.place().apply(along), pose.place().apply(up));
    if (pose.mirrored()) {
      Vector3D across = Frame.of(Vector3D.ZERO, along, up).y();
      frame = Frame.of(middle, frame.x(), frame.x().crossProduct(pose.place().apply(across)));
    }
    from.add(new MaterialPoint(a.body(), a.node(), middle));
    to.add(new MaterialPoint(b.body(), b.node(), middle));
    axes.add(frame);
    links.add(assembly.link(from.get(l), to.get(l), frame));
  }

  /** Node of a bar by its place along it, whatever the order in which nodes are exposed. */
  private MaterialPoint point(int body, int place, Pose pose) {
    int held = pose.heldNode();
    int node = place == held ? 0 : place < held ? place + 1 : place;
    return new MaterialPoint(body, node, bars.get(body).get(place));
  }

  static Vector3D vector(Random random, double size) {
    return new Vector3D(
        size * (2 * random.nextDouble() - 1),
        size * (2 * random.nextDouble() - 1),
        size * (2 * random.nextDouble() - 1));
  }

  static SpringStiffness stiffness(Random random, double scale) {
    double[] k = new double[6];
    for (int i = 0; i < 6; i++) {
      k[i] = scale * Math.pow(10, 3 + 2 * random.nextDouble()) * (i < 3 ? 1 : 1000);
    }
    return new SpringStiffness(k[0], k[1], k[2], k[3], k[4], k[5]);
  }
}
