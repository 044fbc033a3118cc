package org.counterpull.strength;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.RealMatrix;
import org.counterpull.quantity.Require;

/** One weld treated as a line of unit throat: straight, or an arc of a circle. Lengths in mm. */
public sealed interface LineWeld {

  /** Its length, mm. */
  double lengthMm();

  /** Integral of the place vector along the line, mm2. */
  Vector3D firstMoment();

  /** Integral of the place vector times its transpose along the line, mm3. */
  RealMatrix secondMoment();

  /** Where the force per length is looked at: ends, and points between them on an arc. */
  List<Station> stations();

  /**
   * A point of a weld.
   *
   * @param at place, mm
   * @param along unit tangent there
   */
  record Station(Vector3D at, Vector3D along) {}

  /** A straight weld. */
  record Straight(Vector3D start, Vector3D end) implements LineWeld {
    public Straight {
      Require.positive("length of a weld", end.distance(start), "mm");
    }

    @Override
    public double lengthMm() {
      return end.distance(start);
    }

    @Override
    public Vector3D firstMoment() {
      return new Vector3D(lengthMm() / 2, start.add(end));
    }

    @Override
    public RealMatrix secondMoment() {
      Vector3D middle = new Vector3D(0.5, start.add(end));
      Vector3D run = end.subtract(start);
      return Tensors.product(middle, middle)
          .add(Tensors.product(run, run).scalarMultiply(1.0 / 12))
          .scalarMultiply(lengthMm());
    }

    @Override
    public List<Station> stations() {
      Vector3D along = end.subtract(start).normalize();
      return List.of(new Station(start, along), new Station(end, along));
    }
  }

  /**
   * An arc, possibly a full circle.
   *
   * @param centre of the circle
   * @param axis unit vector; the arc turns right-handed about it
   * @param startArm from the centre to the start; its length is the radius
   * @param sweepRad above 0, at most a full turn
   */
  record Arc(Vector3D centre, Vector3D axis, Vector3D startArm, double sweepRad)
      implements LineWeld {
    private static final double LARGEST_STEP_RAD = Math.toRadians(5);

    public Arc {
      Require.positive("radius of a weld", startArm.getNorm(), "mm");
      Require.positive("sweep of a weld", sweepRad, "rad");
      Require.within("sweep of a weld", sweepRad, 0, 2 * Math.PI + 1e-9, "rad");
    }

    @Override
    public double lengthMm() {
      return startArm.getNorm() * sweepRad;
    }

    @Override
    public Vector3D firstMoment() {
      return new Vector3D(lengthMm(), centre, startArm.getNorm(), armSum());
    }

    @Override
    public RealMatrix secondMoment() {
      Vector3D side = side();
      double sin = Math.sin(sweepRad);
      double quarter = Math.sin(2 * sweepRad) / 4;
      RealMatrix mixed = Tensors.product(centre, armSum());
      RealMatrix skew = Tensors.product(startArm, side).scalarMultiply(sin * sin / 2);
      return Tensors.product(centre, centre)
          .scalarMultiply(sweepRad)
          .add(mixed)
          .add(mixed.transpose())
          .add(Tensors.product(startArm, startArm).scalarMultiply(sweepRad / 2 + quarter))
          .add(Tensors.product(side, side).scalarMultiply(sweepRad / 2 - quarter))
          .add(skew)
          .add(skew.transpose())
          .scalarMultiply(startArm.getNorm());
    }

    /** Integral of the arm over the angle. */
    private Vector3D armSum() {
      return new Vector3D(Math.sin(sweepRad), startArm, 1 - Math.cos(sweepRad), side());
    }

    private Vector3D side() {
      return axis.crossProduct(startArm);
    }

    @Override
    public List<Station> stations() {
      int steps = (int) Math.ceil(sweepRad / LARGEST_STEP_RAD - 1e-9);
      List<Station> stations = new ArrayList<>();
      for (int i = 0; i <= steps; i++) {
        double angle = sweepRad * i / steps;
        Vector3D arm = new Vector3D(Math.cos(angle), startArm, Math.sin(angle), side());
        stations.add(new Station(centre.add(arm), axis.crossProduct(arm).normalize()));
      }
      return List.copyOf(stations);
    }
  }
}
