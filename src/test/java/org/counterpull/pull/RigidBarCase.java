package org.counterpull.pull;

import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/** A rigid bar along y that can only rise and tip about x, on springs at y = -1, 0, 1. */
final class RigidBarCase {
  private static final Vector3D UP = Vector3D.PLUS_K;

  private final Structure structure;
  private final int height;
  private final int tip;
  private final int[] welds = new int[3];

  RigidBarCase(double tackStiffness) {
    Assembly assembly = new Assembly();
    int bar = assembly.body(new RigidBody(Vector3D.ZERO));
    MaterialPoint middle = Shapes.at(assembly, bar, 0);
    int guide = assembly.groundLink(middle, Shapes.AXES);
    int[] tacks = new int[3];
    for (int i = 0; i < 3; i++) {
      MaterialPoint point = Shapes.at(assembly, bar, 0, new Vector3D(0, i - 1, 0));
      tacks[i] = assembly.groundLink(point, Shapes.AXES);
      welds[i] = assembly.groundLink(point, Shapes.AXES);
    }
    height = assembly.reading(assembly.displacement(middle, UP));
    tip = assembly.reading(Coordinate.turn(middle, Vector3D.PLUS_I));
    structure = new Structure(assembly, 3);
    double locked = Double.POSITIVE_INFINITY;
    structure.join(guide, new SpringStiffness(locked, locked, 0, 0, locked, locked));
    for (int tack : tacks) {
      structure.join(tack, rising(tackStiffness));
    }
  }

  private static SpringStiffness rising(double stiffness) {
    return new SpringStiffness(0, 0, stiffness, 0, 0, 0);
  }

  void weld(int number) {
    double[] wanted = {0, 0, -1, 0, 0, 0};
    structure.weld(welds[number], rising(1), rising(1), wanted, number);
  }

  double rise() {
    return structure.reading(height);
  }

  double tip() {
    return structure.reading(tip);
  }

  double shareOfTip(int origin) {
    return structure.share(tip, origin);
  }

  /** The bar after the first welds of an order such as 132. */
  static RigidBarCase welded(String order, int welds, double tack) {
    RigidBarCase bar = new RigidBarCase(tack);
    order.chars().limit(welds).forEach(c -> bar.weld(c - '1'));
    return bar;
  }

  static double finalTip(String order, double tack) {
    return welded(order, 3, tack).tip();
  }

  /** How far the six orders differ in tip, in units of what one weld alone would do. */
  static double spreadOfOrders(double tack) {
    double alone = welded("1", 1, tack).tip();
    double[] tips =
        Stream.of("123", "132", "213", "231", "312", "321")
            .mapToDouble(order -> finalTip(order, tack) / alone)
            .sorted()
            .toArray();
    return tips[5] - tips[0];
  }
}
