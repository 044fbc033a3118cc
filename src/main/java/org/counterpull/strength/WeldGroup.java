package org.counterpull.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.counterpull.quantity.Require;

/**
 * Welds that carry one load together, treated as lines of unit throat that yield alike in every
 * direction, between parts that stay rigid.
 *
 * <p>With the tensor {@code T = integral of (|r|^2 1 - r r^T) ds} about the centroid, a moment
 * turns the part by {@code w = T^-1 M}, and the force per length at a point is {@code F/L + w x r}.
 * For a group in one plane this is the classical sum {@code P/L + M x/J} in the plane and {@code M
 * y/I} out of it.
 *
 * <p><b>Source:</b> O. W. Blodgett, Design of Welded Structures, 1966, section 7.4 (welds as
 * lines), from memory; the form in three dimensions is derived.
 *
 * @param welds at least one
 */
public record WeldGroup(List<LineWeld> welds) {
  /** Share of the largest stiffness against turning below which there is none. */
  private static final double NO_STIFFNESS = 1e-9;

  public WeldGroup {
    welds = List.copyOf(welds);
    if (welds.isEmpty()) {
      throw new IllegalArgumentException("a group has 0 welds: it needs at least 1");
    }
  }

  /** Length of all welds, mm. */
  public double lengthMm() {
    return welds.stream().mapToDouble(LineWeld::lengthMm).sum();
  }

  /** Centre of all welds. */
  public Vector3D centroid() {
    Vector3D sum = welds.stream().map(LineWeld::firstMoment).reduce(Vector3D.ZERO, Vector3D::add);
    return sum.scalarMultiply(1 / lengthMm());
  }

  /** Second moment about an axis through the centroid, mm3: I in the plane, J square to it. */
  public double secondMomentMm3(Vector3D axis) {
    return Tensors.along(turning(), axis.normalize());
  }

  /** Section modulus for the point furthest from an axis through the centroid, mm2. */
  public double sectionModulusMm2(Vector3D axis) {
    Vector3D centre = centroid();
    double furthest =
        stations().stream()
            .mapToDouble(s -> s.at().subtract(centre).crossProduct(axis.normalize()).getNorm())
            .max()
            .orElseThrow();
    return secondMomentMm3(axis) / Require.positive("distance from the axis", furthest, "mm");
  }

  /** True where the group can hold a force on a line of action: see {@link #forces}. */
  public boolean holds(Vector3D forceN, Vector3D at) {
    return free()
        .map(line -> unheldNmm(line, at.subtract(centroid()).crossProduct(forceN)) == 0)
        .orElse(true);
  }

  /**
   * Force per length at every station.
   *
   * @param forceN force on the group
   * @param at a point on its line of action
   * @throws IllegalArgumentException when a single straight weld would have to carry a moment about
   *     its own line
   */
  public List<StationForce> forces(Vector3D forceN, Vector3D at) {
    return forces(forceN, at, Vector3D.ZERO);
  }

  /** The same with a moment, N mm, that acts beside the force. */
  public List<StationForce> forces(Vector3D forceN, Vector3D at, Vector3D momentNmm) {
    Vector3D centre = centroid();
    Vector3D moment = momentNmm.add(at.subtract(centre).crossProduct(forceN));
    Vector3D turn = turn(moment);
    Vector3D even = forceN.scalarMultiply(1 / lengthMm());
    List<StationForce> forces = new ArrayList<>();
    for (LineWeld weld : welds) {
      for (LineWeld.Station station : weld.stations()) {
        Vector3D byTurn = turn.crossProduct(station.at().subtract(centre));
        forces.add(new StationForce(weld, station, even.add(byTurn)));
      }
    }
    return List.copyOf(forces);
  }

  private List<LineWeld.Station> stations() {
    return welds.stream().flatMap(weld -> weld.stations().stream()).toList();
  }

  /** Stiffness against turning about the centroid. */
  private RealMatrix turning() {
    Vector3D centre = centroid();
    RealMatrix second =
        welds.stream().map(LineWeld::secondMoment).reduce(RealMatrix::add).orElseThrow();
    second = second.subtract(Tensors.product(centre, centre).scalarMultiply(lengthMm()));
    return MatrixUtils.createRealIdentityMatrix(3)
        .scalarMultiply(second.getTrace())
        .subtract(second);
  }

  /** The only line about which nothing keeps the part from turning. */
  private Optional<Vector3D> free() {
    SingularValueDecomposition parts = new SingularValueDecomposition(turning());
    double[] stiffness = parts.getSingularValues();
    return stiffness[2] > NO_STIFFNESS * stiffness[0]
        ? Optional.empty()
        : Optional.of(new Vector3D(parts.getV().getColumn(2)));
  }

  /** Moment about the free line, 0 where it is nothing but rounding. */
  private static double unheldNmm(Vector3D line, Vector3D momentNmm) {
    double aboutLine = momentNmm.dotProduct(line);
    return Math.abs(aboutLine) > 1e-6 * Math.max(1, momentNmm.getNorm()) ? aboutLine : 0;
  }

  private Vector3D turn(Vector3D momentNmm) {
    RealMatrix turning = turning();
    Optional<Vector3D> line = free();
    if (line.isEmpty()) {
      return new Vector3D(MatrixUtils.inverse(turning).operate(momentNmm.toArray()));
    }
    double unheld = unheldNmm(line.get(), momentNmm);
    if (unheld != 0) {
      throw new IllegalArgumentException(
          "moment about the only line of weld is "
              + Math.round(unheld)
              + " N mm: one straight weld carries none, its root would open");
    }
    // Square to a straight line the stiffness is the same in every direction: half the trace.
    return new Vector3D(2 / turning.getTrace(), momentNmm);
  }
}
