package org.counterpull.heat.solve;

/** The inner loops over the cells of a lattice. */
final class Kernel {
  private Kernel() {}

  /** Lattice of a block as the loops see it. */
  record Lattice(
      int strideY, int strideZ, double[] gx, double[] gy, double[] gz, double[] perVolume) {}

  /** Rate of change of the enthalpy: {@code out = L(theta) + net}, J/mm3s. */
  static void rate(Lattice lattice, int lo, int hi, double[] th, double[] net, double[] out) {
    int sy = lattice.strideY;
    int sz = lattice.strideZ;
    double[] gx = lattice.gx;
    double[] gy = lattice.gy;
    double[] gz = lattice.gz;
    double[] perVolume = lattice.perVolume;
    for (int p = lo; p < hi; p++) {
      double t = th[p];
      double flux =
          gx[p] * (th[p + 1] - t)
              + gx[p - 1] * (th[p - 1] - t)
              + gy[p] * (th[p + sy] - t)
              + gy[p - sy] * (th[p - sy] - t)
              + gz[p] * (th[p + sz] - t)
              + gz[p - sz] * (th[p - sz] - t);
      out[p] = (flux + net[p]) * perVolume[p];
    }
  }

  /** Weights of one stage. */
  record Weights(double mu, double nu, double start, double rate, double first) {}

  /** {@code out = mu y + nu older + start now + rate L(y) + first L(now)}. */
  static void stage(
      Lattice lattice,
      int lo,
      int hi,
      double[] th,
      double[] net,
      Weights w,
      double[][] states,
      double[] out) {
    int sy = lattice.strideY;
    int sz = lattice.strideZ;
    double[] gx = lattice.gx;
    double[] gy = lattice.gy;
    double[] gz = lattice.gz;
    double[] perVolume = lattice.perVolume;
    double[] y = states[0];
    double[] older = states[1];
    double[] now = states[2];
    double[] firstRate = states[3];
    double mu = w.mu;
    double nu = w.nu;
    double start = w.start;
    double rate = w.rate;
    double first = w.first;
    for (int p = lo; p < hi; p++) {
      double t = th[p];
      double flux =
          gx[p] * (th[p + 1] - t)
              + gx[p - 1] * (th[p - 1] - t)
              + gy[p] * (th[p + sy] - t)
              + gy[p - sy] * (th[p - sy] - t)
              + gz[p] * (th[p + sz] - t)
              + gz[p - sz] * (th[p - sz] - t);
      out[p] =
          mu * y[p]
              + nu * older[p]
              + start * now[p]
              + rate * ((flux + net[p]) * perVolume[p])
              + first * firstRate[p];
    }
  }
}
