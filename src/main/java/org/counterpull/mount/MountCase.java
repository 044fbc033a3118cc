package org.counterpull.mount;

import java.util.List;
import java.util.Optional;

/**
 * One thing welded to one tube, with what is near.
 *
 * @param name as it is reported
 * @param tube the tube
 * @param partner what is welded on
 * @param seams its welds, in the order of welding
 * @param legMm leg of its fillets
 * @param near what heat or movement can spoil
 * @param ambientC air and cold metal
 * @param hottestFactor upper over central efficiency of the process: for what must not get hot
 * @param fastestMmPerS fastest travel of the hand
 * @param forceN working load on what is welded on; empty where none is given
 * @param armMm from the tube's surface to where the load acts
 * @param inside what is in the tube
 * @param assumptions what was taken to be so, in sentences
 */
public record MountCase(
    String name,
    BoredTube tube,
    Partner partner,
    List<Seam> seams,
    double legMm,
    List<Sensitive> near,
    double ambientC,
    double hottestFactor,
    double fastestMmPerS,
    Optional<Double> forceN,
    double armMm,
    Inside inside,
    List<String> assumptions) {

  public MountCase {
    seams = List.copyOf(seams);
    near = List.copyOf(near);
    assumptions = List.copyOf(assumptions);
    if (seams.isEmpty()) {
      throw new IllegalArgumentException(name + " has no weld");
    }
  }

  /** The case with its welds laid otherwise. */
  MountCase with(List<Seam> others) {
    return new MountCase(
        name,
        tube,
        partner,
        others,
        legMm,
        near,
        ambientC,
        hottestFactor,
        fastestMmPerS,
        forceN,
        armMm,
        inside,
        assumptions);
  }

  /** Bores and bearing seats of which the size matters. */
  List<Sensitive> sized() {
    return near.stream().filter(Sensitive::sized).toList();
  }

  /** Where, along the tube, the welds lie furthest from their middle. */
  public double halfLengthMm() {
    return partner.alongMm() / 2;
  }
}
