package org.counterpull.heat.solve;

import java.util.Arrays;
import java.util.List;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.block.Edge;
import org.counterpull.heat.material.ThermalMaterial;

/** The state of one block in a simulation, and the arithmetic over its cells. */
final class BlockField {
  /** Rise at which twice the error is allowed that is allowed in cold metal. */
  private static final double DOUBLING_RISE_K = 25;

  /** Change in one step, over the rise, up to which a surface's tangent serves. */
  private static final double TANGENT_SHARE = 0.25;

  private static final double SMALL_K = 5;

  /** Cells that are worked on while they are in the nearest cache. */
  private static final int TILE = 2048;

  private final Block block;
  private final ThermalMaterial material;
  private final SurfaceTerms surface;
  private final List<Edge> edges;
  private final Kernel.Lattice lattice;
  private final int[] halfFrom;
  private final int[] termFrom;
  private final int[] mergedFrom;
  private final double[][] lostW = new double[Crew.HALVES][SurfaceTerms.ACCOUNTS];
  private final double[] source;
  private final double[] net;
  private final double[] peak;
  private double[] theta;
  private double[] nextTheta;
  private double[] now;
  private double[] stage;
  private double[] older;
  private final double[] firstRate;
  private final double[] lastRate;
  private boolean secondStage;
  private double rateKPerS = Double.POSITIVE_INFINITY;
  private boolean fed;

  BlockField(Block block, SurfaceTerms surface, double startC) {
    this.block = block;
    this.material = block.material();
    this.surface = surface;
    this.edges = block.edges();
    int size = block.size();
    double[] perVolume = new double[size];
    for (int p = 0; p < size; p++) {
      double v = block.volumeMm3()[p];
      perVolume[p] = v > 0 ? 1 / v : 0;
    }
    this.lattice =
        new Kernel.Lattice(
            block.strides()[1],
            block.strides()[2],
            block.shapeMm(0),
            block.shapeMm(1),
            block.shapeMm(2),
            perVolume);
    int middle = (block.first() + block.end()) / 2;
    this.halfFrom = new int[] {block.first(), middle, block.end()};
    this.termFrom = new int[halfFrom.length];
    this.mergedFrom = new int[halfFrom.length];
    for (int n = 0; n < halfFrom.length; n++) {
      termFrom[n] = surface.from(halfFrom[n], false);
      mergedFrom[n] = surface.from(halfFrom[n], true);
    }
    this.source = new double[size];
    this.net = new double[size];
    this.theta = new double[size];
    this.nextTheta = new double[size];
    this.now = new double[size];
    this.stage = new double[size];
    this.older = new double[size];
    this.firstRate = new double[size];
    this.lastRate = new double[size];
    Arrays.fill(now, material.enthalpyJPerMm3(startC));
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

  /** Says that arcs or borders give power to the cells. */
  void fed() {
    fed = true;
  }

  /** Nothing gives power to the cells any more. */
  void unfed() {
    if (fed) {
      Arrays.fill(source, 0);
      fed = false;
    }
  }

  /** Fastest change of a cell in the last step, K/s. */
  double rateKPerS() {
    return rateKPerS;
  }

  /** Takes over how fast the same metal changed on other cells. */
  void rateOf(BlockField other) {
    rateKPerS = other.rateKPerS;
  }

  /** Conduction paths beyond the lattice's. */
  List<Edge> edges() {
    return edges;
  }

  /** Power lost to an account in the stage. */
  double lostW(int account) {
    return lostW[0][account] + lostW[1][account];
  }

  /** Holds the present state for neighbours to look at while this block waits. */
  void hold() {
    System.arraycopy(now, 0, stage, 0, now.length);
    material.theta(stage, theta, block.first(), block.end());
  }

  /** Makes the present state the stage that is worked on. */
  void begin(int half) {
    int lo = halfFrom[half];
    int hi = halfFrom[half + 1];
    System.arraycopy(now, lo, stage, lo, hi - lo);
    System.arraycopy(source, lo, net, lo, hi - lo);
    material.theta(stage, theta, lo, hi);
    surface.linearise(termFrom[half], termFrom[half + 1], material, stage, theta);
    takeSurface(half, theta);
  }

  private void takeSurface(int half, double[] ofTheta) {
    surface.take(mergedFrom[half], mergedFrom[half + 1], ofTheta, net, lostW[half]);
  }

  /** What passes between cells that are not neighbours in the lattice. */
  void passEdges() {
    for (Edge e : edges) {
      double power = e.shapeMm() * (theta[e.cellB()] - theta[e.cellA()]);
      net[e.cellA()] += power;
      net[e.cellB()] -= power;
    }
  }

  /** Keeps the rate of the stage as that of the start of the step. */
  void rateAtStart(int half) {
    Kernel.rate(lattice, halfFrom[half], halfFrom[half + 1], theta, net, firstRate);
  }

  /** Keeps the rate of the stage as that of the end of the step. */
  void rateAtEnd(int half) {
    Kernel.rate(lattice, halfFrom[half], halfFrom[half + 1], theta, net, lastRate);
  }

  /** First stage of a step, and the surface's powers in it. */
  void firstStage(int half, double stepTimesRate) {
    int hi = halfFrom[half + 1];
    for (int p = halfFrom[half]; p < hi; p++) {
      stage[p] = now[p] + stepTimesRate * firstRate[p];
    }
    material.theta(stage, theta, halfFrom[half], hi);
    System.arraycopy(source, halfFrom[half], net, halfFrom[half], hi - halfFrom[half]);
    takeSurface(half, theta);
  }

  /** Makes ready for the first of the later stages. */
  void startStages() {
    secondStage = true;
  }

  /** Works out a later stage into a spare array, and the surface's powers in it. */
  void nextStage(int half, Kernel.Weights weights) {
    double[][] states = {stage, secondStage ? now : older, now, firstRate};
    int end = halfFrom[half + 1];
    for (int lo = halfFrom[half]; lo < end; lo += TILE) {
      int hi = Math.min(end, lo + TILE);
      Kernel.stage(lattice, lo, hi, theta, net, weights, states, older);
      material.theta(older, nextTheta, lo, hi);
      System.arraycopy(source, lo, net, lo, hi - lo);
    }
    takeSurface(half, nextTheta);
  }

  /** Makes that array the stage. */
  void turn() {
    secondStage = false;
    double[] newest = older;
    older = stage;
    stage = newest;
    double[] newestTheta = nextTheta;
    nextTheta = theta;
    theta = newestTheta;
  }

  /**
   * Largest estimated error of the step from the present state to the stage, over what is allowed:
   * the tolerance in metal as cold as the air, more in proportion where it is hot. A change so
   * large that the tangents of the surface no longer hold counts as an error as well.
   *
   * <p>The residual of the trapezoidal rule, as in B. P. Sommeijer, L. F. Shampine, J. G. Verwer,
   * RKC: an explicit solver for parabolic PDEs, J. Comput. Appl. Math. 88, 1998, 315-326, eq. 2.9.
   */
  double error(double stepS, double ambientC, double toleranceK) {
    double worst = 0;
    double steepest = 0;
    double perJ = material.greatestKPerJMm3();
    double ambient = material.enthalpyJPerMm3(ambientC);
    for (int p = block.first(), end = block.end(); p < end; p++) {
      double error = 0.8 * (now[p] - stage[p]) + 0.4 * stepS * (firstRate[p] + lastRate[p]);
      double rise = Math.abs(now[p] - ambient) * perJ;
      worst = Math.max(worst, Math.abs(error) * perJ / (1 + rise / DOUBLING_RISE_K));
      double change = Math.abs(stage[p] - now[p]) * perJ / (SMALL_K + TANGENT_SHARE * rise);
      steepest = Math.max(steepest, change);
    }
    // As a cube, so that the step is cut in proportion to the change.
    return Math.max(worst / toleranceK, steepest * steepest * steepest);
  }

  /** Makes the stage the present state. */
  void accept(double stepS) {
    double[] old = now;
    now = stage;
    stage = old;
    double most = 0;
    for (int p = block.first(), end = block.end(); p < end; p++) {
      peak[p] = Math.max(peak[p], now[p]);
      most = Math.max(most, Math.abs(now[p] - old[p]));
    }
    rateKPerS = most * material.greatestKPerJMm3() / stepS;
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
}
