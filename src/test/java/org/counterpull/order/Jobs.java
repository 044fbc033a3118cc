package org.counterpull.order;

import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.JointForm;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Side;

/** The small weldments that several tests build. */
public final class Jobs {
  private Jobs() {}

  /**
   * A bar of 900 mm with a hinge near each end and a tab in the middle; each welded on two sides.
   */
  public static Job hingeBar() {
    Job job =
        new Job()
            .part("bar", new Flat(50, 12), 900, 0, 0, 0)
            .part("hinge-left", new RoundTube(32, 6), 75, 62.5, -42, 0)
            .part("hinge-right", new RoundTube(32, 6), 75, 762.5, -42, 0)
            .part("tab", new Flat(50, 10), 60, 450, 0, 6)
            .joint("left", "hinge-left", "bar", JointForm.TEE)
            .joint("right", "hinge-right", "bar", JointForm.TEE)
            .joint("tab", "tab", "bar", JointForm.TEE)
            .feature(
                "bores",
                Feature.Kind.BORE,
                java.util.List.of("hinge-left", "hinge-right"),
                false,
                19,
                18.3)
            .check("pin line", Check.Kind.COAXIAL, "hinge-left", "hinge-right")
            .fixture("rod", Fixture.Kind.THROUGH_ROD, "hinge-left", "hinge-right")
            .fixture("clamps", Fixture.Kind.CLAMP, "bar");
    twoSides(job, "left", 62.5, 137.5);
    twoSides(job, "right", 762.5, 837.5);
    job.run("tab", Side.LEFT, new Vector3D(445, -25, 6), new Vector3D(445, 25, 6)).add();
    job.run("tab", Side.RIGHT, new Vector3D(455, -25, 6), new Vector3D(455, 25, 6)).add();
    return job;
  }

  private static void twoSides(Job job, String joint, double fromMm, double toMm) {
    job.run(joint, Side.TOP, new Vector3D(fromMm, -25, 6), new Vector3D(toMm, -25, 6)).add();
    job.run(joint, Side.BOTTOM, new Vector3D(fromMm, -25, -6), new Vector3D(toMm, -25, -6)).add();
  }

  /** Four flats of 60 x 10 round a rectangle of 800 x 600, each corner a butt above and below. */
  public static Job frame() {
    Job job =
        new Job()
            .part("front", new Flat(60, 10), 800, 0, 0, 0)
            .part("back", new Flat(60, 10), 800, 0, 600, 0)
            .part("left", new Flat(60, 10), 540, v(30, 30), Vector3D.PLUS_J, Vector3D.PLUS_K)
            .part("right", new Flat(60, 10), 540, v(770, 30), Vector3D.PLUS_J, Vector3D.PLUS_K);
    corner(job, "fl", "left", "front", 0, 30);
    corner(job, "fr", "right", "front", 740, 30);
    corner(job, "bl", "left", "back", 0, 570);
    corner(job, "br", "right", "back", 740, 570);
    return job;
  }

  private static void corner(
      Job job, String joint, String first, String second, double x, double y) {
    job.joint(joint, first, second, JointForm.BUTT);
    job.run(joint, Side.TOP, new Vector3D(x, y, 5), new Vector3D(x + 60, y, 5)).butt().add();
    job.run(joint, Side.BOTTOM, new Vector3D(x, y, -5), new Vector3D(x + 60, y, -5))
        .butt()
        .turned()
        .add();
  }

  private static Vector3D v(double x, double y) {
    return new Vector3D(x, y, 0);
  }

  /** A bracket whose ears are beyond the bench's machine and whose rib isn't. */
  public static Job bracket() {
    Job job =
        new Job()
            .part("base", new Flat(150, 20), 220, 0, 0, 0)
            .part("ear-1", new Flat(100, 15), 140, v3(70), Vector3D.PLUS_K, Vector3D.PLUS_I)
            .part("ear-2", new Flat(100, 15), 140, v3(150), Vector3D.PLUS_K, Vector3D.PLUS_I)
            .part("rib", new Flat(60, 6), 65, 77.5, 0, 40);
    for (int i = 1; i <= 2; i++) {
      double x = i == 1 ? 70 : 150;
      job.joint("ear-" + i, "ear-" + i, "base", JointForm.TEE);
      for (Side side : new Side[] {Side.LEFT, Side.RIGHT}) {
        double at = x + (side == Side.LEFT ? -7.5 : 7.5);
        job.run("ear-" + i, side, new Vector3D(at, -50, 10), new Vector3D(at, 50, 10))
            .at("next door", "big mag")
            .passes(3)
            .walls(20)
            .add();
      }
    }
    job.joint("rib", "rib", "base", JointForm.TEE);
    job.run("rib", Side.FRONT, new Vector3D(77.5, -3, 10), new Vector3D(142.5, -3, 10)).add();
    job.run("rib", Side.BACK, new Vector3D(77.5, 3, 10), new Vector3D(142.5, 3, 10)).add();
    return job;
  }

  private static Vector3D v3(double x) {
    return new Vector3D(x, 0, 10);
  }
}
