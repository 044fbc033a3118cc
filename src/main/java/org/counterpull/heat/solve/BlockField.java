package org.counterpull.heat.solve;

import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Edge;
import org.counterpull.heat.material.ThermalMaterial;

/** The state of one block in a simulation, and the arithmetic over its cells. */
final class BlockField {
  private final Block block;
  private final ThermalMaterial material;
  private final SurfaceTerms surface;
  private final List<Edge> edges;
  private final double[] perVolume;
  private final double[] source;
  private final double[] net;
  private final double[] theta;
  private final double[] peak;
  private double[] now;
  private double[] stage;
  private double[] older;
  private double[] firstRate;
  private double[] lastRate;
  private final double[] lostW = new double[SurfaceTerms.ACCOUNTS];

  BlockField(Block block, SurfaceTerms surface, double startC) {
    this.block = block;
    this.material = block.material();
    this.surface = surface;
    this.edges = block.edges();
    int size = block.size();
    this.perVolume = new double[size];
    for (int p = 0; p < size; p++) {
      double v = block.volumeMm3()[p];
      perVolume[p] = v > 0 ? 1 / v : 0;
    }
    this.source = new double[size];
    this.net = new double[size];
    this.theta = new double[size];
    this.now = new double[size];
    this.stage = new double[size];
    this.older = new double[size];
    this.firstRate = new double[size];
    this.lastRate = new double[size];
    java.util.Arrays.fill(now, material.enthalpyJPerMm3(startC));
    this.peak = now.clone();
  }

  Block block() {
    return block;
  }

  ThermalMaterial material() {
    return material;
  }

  SurfaceTerms surface() {
    return surface;
  }

  /** Enthalpy at the present time, J/mm3. */
  double[] now() {
    return now;
  }

  /** Highest enthalpy so far. */
  double[] peak() {
    return peak;
  }

  /** Enthalpy in the stage that is being worked on. */
  double[] stage() {
    return stage;
  }

  /** Conductivity integral in that stage. */
  double[] theta() {
    return theta;
  }

  /** Power into each cell other than through the lattice, W. */
  double[] net() {
    return net;
  }

  /** Power of the arcs by cell during the step, W. */
  double[] source() {
    return source;
  }

  /** Power lost by account in the last evaluation. */
  double[] lostW() {
    return lostW;
  }

  /** Makes the present state the stage that is worked on. */
  void begin() {
    System.arraycopy(now, 0, stage, 0, now.length);
  }

  /** Works out what enters the cells from arcs, surface and extra paths, for the stage. */
  void exchange() {
    material.theta(stage, theta, 0, stage.length);
    System.arraycopy(source, 0, net, 0, net.length);
    java.util.Arrays.fill(lostW, 0);
    surface.take(material, stage, net, lostW);
    for (Edge e : edges) {
      double power = e.shapeMm() * (theta[e.cellB()] - theta[e.cellA()]);
      net[e.cellA()] += power;
      net[e.cellB()] -= power;
    }
  }

  /** Keeps the rate of the stage as that of the start of the step. */
  void rateAtStart() {
    rate(firstRate);
  }

  /** Keeps the rate of the stage as that of the end of the step. */
  void rateAtEnd() {
    rate(lastRate);
  }

  private void rate(double[] out) {
    int sy = block.strides()[1];
    int sz = block.strides()[2];
    double[] gx = block.shapeMm(0);
    double[] gy = block.shapeMm(1);
    double[] gz = block.shapeMm(2);
    for (int p = block.first(), end = block.end(); p < end; p++) {
      double t = theta[p];
      double flux =
          gx[p] * (theta[p + 1] - t)
              + gx[p - 1] * (theta[p - 1] - t)
              + gy[p] * (theta[p + sy] - t)
              + gy[p - sy] * (theta[p - sy] - t)
              + gz[p] * (theta[p + sz] - t)
              + gz[p - sz] * (theta[p - sz] - t);
      out[p] = (flux + net[p]) * perVolume[p];
    }
  }

  /** First stage of a step. */
  void firstStage(double stepTimesRate) {
    System.arraycopy(now, 0, older, 0, now.length);
    for (int p = block.first(), end = block.end(); p < end; p++) {
      stage[p] = now[p] + stepTimesRate * firstRate[p];
    }
  }

  /** A later stage: {@code mu stage + nu older + start now + rate L(stage) + first L(now)}. */
  void nextStage(double mu, double nu, double start, double rate, double first) {
    int sy = block.strides()[1];
    int sz = block.strides()[2];
    double[] gx = block.shapeMm(0);
    double[] gy = block.shapeMm(1);
    double[] gz = block.shapeMm(2);
    double[] th = theta;
    double[] y = stage;
    double[] y2 = older;
    for (int p = block.first(), end = block.end(); p < end; p++) {
      double t = th[p];
      double flux =
          gx[p] * (th[p + 1] - t)
              + gx[p - 1] * (th[p - 1] - t)
              + gy[p] * (th[p + sy] - t)
              + gy[p - sy] * (th[p - sy] - t)
              + gz[p] * (th[p + sz] - t)
              + gz[p - sz] * (th[p - sz] - t);
      y2[p] =
          mu * y[p]
              + nu * y2[p]
              + start * now[p]
              + rate * ((flux + net[p]) * perVolume[p])
              + first * firstRate[p];
    }
    double[] newest = older;
    older = stage;
    stage = newest;
  }

  /**
   * Largest estimated error of the step from the present state to the stage, K.
   *
   * <p>The residual of the trapezoidal rule, as in B. P. Sommeijer, L. F. Shampine, J. G. Verwer,
   * RKC: an explicit solver for parabolic PDEs, J. Comput. Appl. Math. 88, 1998, 315-326, eq. 2.9.
   */
  double errorK(double stepS) {
    double worst = 0;
    for (int p = block.first(), end = block.end(); p < end; p++) {
      double error = 0.8 * (now[p] - stage[p]) + 0.4 * stepS * (firstRate[p] + lastRate[p]);
      worst = Math.max(worst, Math.abs(error));
    }
    return worst * material.greatestKPerJMm3();
  }

  /** Makes the stage the present state; the rate at its end is the next one's at its start. */
  void accept() {
    double[] old = now;
    now = stage;
    stage = old;
    double[] rates = firstRate;
    firstRate = lastRate;
    lastRate = rates;
    for (int p = block.first(), end = block.end(); p < end; p++) {
      peak[p] = Math.max(peak[p], now[p]);
    }
  }

  /** Heat in the block above 0 C. */
  double energyJ() {
    double sum = 0;
    double[] volume = block.volumeMm3();
    for (int p = block.first(), end = block.end(); p < end; p++) {
      sum += volume[p] * now[p];
    }
    return sum;
  }

  /** Adds to each cell an upper bound of its conductance through the lattice, W/K, twice. */
  void addBound(double[] conductance) {
    // So that the product with the greatest rise is the greatest diffusivity.
    double k = material.greatestDiffusivityMm2PerS() / material.greatestKPerJMm3();
    int[] strides = block.strides();
    for (int d = 0; d < 3; d++) {
      double[] g = block.shapeMm(d);
      for (int p = block.first(), end = block.end(); p < end; p++) {
        conductance[p] += 2 * k * (g[p] + g[p - strides[d]]);
      }
    }
    for (Edge e : edges) {
      conductance[e.cellA()] += 2 * k * e.shapeMm();
      conductance[e.cellB()] += 2 * k * e.shapeMm();
    }
    surface.addBound(conductance);
  }

  /** Upper bound of the fastest decay, 1/s, from conductances. */
  double stiffness(double[] conductance) {
    double worst = 0;
    for (int p = block.first(), end = block.end(); p < end; p++) {
      worst = Math.max(worst, conductance[p] * perVolume[p]);
    }
    return worst * material.greatestKPerJMm3();
  }
}
