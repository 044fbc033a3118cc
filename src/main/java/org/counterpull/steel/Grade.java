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
 * @param awsListed whether the preheat table of AWS D1.1 lists it
 * @param notWelded why it is not welded at all; empty where it is
 */
public record Grade(
    String designation,
    List<String> aliases,
    Family family,
    String limits,
    Optional<Composition> typical,
    OptionalDouble tensileMPa,
    OptionalDouble yieldMPa,
    String source,
    boolean awsListed,
    Optional<String> notWelded) {

  public Grade {
    aliases = List.copyOf(aliases);
  }
}
