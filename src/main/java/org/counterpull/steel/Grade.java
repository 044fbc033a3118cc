package org.counterpull.steel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A grade as bought.
 *
 * @param designation its name in the standard
 * @param aliases other names understood
 * @param family which rules apply
 * @param limits limits of composition in words; empty where none are kept here
 * @param typical a composition to assume without a certificate; only where the family hardens by
 *     carbon
 * @param tensileMPa fu, least value of the standard
 * @param yieldMPa fy, least value of the standard
 * @param source where the figures come from
 */
public record Grade(
    String designation,
    List<String> aliases,
    Family family,
    String limits,
    Optional<Composition> typical,
    OptionalDouble tensileMPa,
    OptionalDouble yieldMPa,
    String source) {

  public Grade {
    aliases = List.copyOf(aliases);
  }
}
