package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Computed;

/**
 * What the force on a joint does to its welds, in the worst direction that the force can take.
 *
 * @param loadN working load from the file, N
 * @param at where it acts, in words
 * @param utilisation the highest of all; above 1 the joint is overloaded
 * @param governs what gives it: direction and rule
 * @param ways one for each direction that the force can take
 * @param countedMm length of weld that counts
 * @param leastLeg leg that carries the load, mm, in half millimetres; empty for grooves and flares,
 *     and where none does
 * @param leastThroat throat that carries the load, mm; empty where none does
 * @param standOffMm how far from the weld the force may act before the welds are used up; empty
 *     where it acts on a pin
 * @param remarks what was assumed and what it means, in sentences
 * @param shortfall what is wrong, in one sentence; empty where the joint holds
 * @param remedy what would carry it
 */
public record LoadCheck(
    double loadN,
    String at,
    Computed utilisation,
    String governs,
    List<Way> ways,
    Computed countedMm,
    Optional<Computed> leastLeg,
    Optional<Computed> leastThroat,
    Optional<Computed> standOffMm,
    List<String> remarks,
    Optional<String> shortfall,
    String remedy) {

  public LoadCheck {
    ways = List.copyOf(ways);
    remarks = List.copyOf(remarks);
  }

  /**
   * One direction of the force.
   *
   * @param direction in words
   * @param lineForce greatest force per length, working load
   * @param simplified how far the throat is used by EN 1993-1-8, simplified, design load
   * @param directional the same by the directional method; empty on curved welds and full grooves
   * @param allowable how far the throat is used by AWS D1.1, working load
   * @param besideWeld how far the metal beside the weld is used, working load
   */
  public record Way(
      String direction,
      Computed lineForce,
      Computed simplified,
      Optional<Computed> directional,
      Computed allowable,
      Computed besideWeld) {

    /** The highest of those that must hold: the directional method is a second opinion. */
    double utilisation() {
      return Math.max(simplified.value(), Math.max(allowable.value(), besideWeld.value()));
    }
  }
}
