package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import org.counterpull.quantity.Computed;
import org.counterpull.steel.HazHardness.Estimates;

/**
 * What the steels of a joint ask for.
 *
 * @param parts both parts with what is known of their steel
 * @param hardness the three estimates beside the weld; empty where no composition is known
 * @param preheats what each method says
 * @param tackPreheat least temperature before a tack, which brings little heat; empty where nothing
 *     is welded
 * @param heating how the preheat is reached and measured; empty where none is needed
 * @param forbidden what mustn't be done
 */
public record SteelAdvice(
    List<PartSteel> parts,
    Optional<Hardness> hardness,
    List<PreheatOpinion> preheats,
    Optional<Computed> tackPreheat,
    List<String> heating,
    List<Forbidden> forbidden) {
  /** Nothing is known and nothing asked for. */
  public static final SteelAdvice NONE =
      new SteelAdvice(
          List.of(), Optional.empty(), List.of(), Optional.empty(), List.of(), List.of());

  public SteelAdvice {
    parts = List.copyOf(parts);
    preheats = List.copyOf(preheats);
    heating = List.copyOf(heating);
    forbidden = List.copyOf(forbidden);
  }

  /**
   * The steel of a part.
   *
   * @param part its name
   * @param designation grade
   * @param known how its composition is known, with the limits of the grade
   * @param equivalents CE, CET, Pcm and CEN; empty where they mean nothing
   */
  public record PartSteel(
      String part, String designation, String known, List<Computed> equivalents) {
    public PartSteel {
      equivalents = List.copyOf(equivalents);
    }
  }

  /**
   * Greatest hardness beside the weld at the fastest cooling.
   *
   * @param t85S that cooling time
   * @param estimates of three methods
   */
  public record Hardness(double t85S, Estimates estimates) {}

  /**
   * Something that mustn't be done.
   *
   * @param why the reason
   * @param wayForward what else
   */
  public record Forbidden(String why, String wayForward) {}
}
