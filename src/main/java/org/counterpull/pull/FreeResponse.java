package org.counterpull.pull;

/**
 * What an inherent strain inside one body would do to its exposed nodes if nothing else held it but
 * the body's own held node.
 *
 * @param displacements six numbers for each exposed node, mm and rad
 */
public record FreeResponse(double[] displacements) {
  public FreeResponse {
    displacements = displacements.clone();
  }

  @Override
  public double[] displacements() {
    return displacements.clone();
  }

  /** Both at once. */
  public FreeResponse plus(FreeResponse other) {
    double[] sum = displacements.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += other.displacements[i];
    }
    return new FreeResponse(sum);
  }
}
