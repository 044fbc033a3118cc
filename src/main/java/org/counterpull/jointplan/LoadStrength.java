package org.counterpull.jointplan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.strength.AwsFilletStress;
import org.counterpull.strength.CorrelationFactor;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.PartMaterial.Certainty;

/**
 * Strengths that a loaded joint is checked with.
 *
 * @param tensileMPa f_u of the weaker part, at most that of class 70 filler metal
 * @param yieldMPa f_y of the weaker part
 * @param betaW correlation factor of EN 1993-1-8
 * @param remarks what was assumed
 */
record LoadStrength(double tensileMPa, double yieldMPa, double betaW, List<String> remarks) {
  /** S235, the weakest structural grade: assumed, aloud, for a listed grade without a strength. */
  private static final double WEAKEST_TENSILE_MPA = 360;

  private static final double WEAKEST_YIELD_MPA = 235;

  LoadStrength {
    remarks = List.copyOf(remarks);
  }

  /**
   * Empty where a part is of unknown steel, of a grade that is not listed here, cast iron or
   * aluminium: nothing is guessed there.
   */
  static Optional<LoadStrength> of(Part first, Part second) {
    List<PartMaterial> both = List.of(first.steel(), second.steel());
    if (!both.stream().allMatch(LoadStrength::isWeldableSteel)) {
      return Optional.empty();
    }
    double tensile =
        least(both.stream().map(m -> grade(m).map(Grade::tensileMPa)), WEAKEST_TENSILE_MPA);
    double yield = least(both.stream().map(m -> grade(m).map(Grade::yieldMPa)), WEAKEST_YIELD_MPA);
    double beta =
        both.stream().mapToDouble(m -> CorrelationFactor.of(m.designation())).max().orElseThrow();
    List<String> remarks =
        both.stream()
            .filter(
                m -> grade(m).map(Grade::tensileMPa).filter(OptionalDouble::isPresent).isEmpty())
            .map(PartMaterial::designation)
            .distinct()
            .map(LoadStrength::assumed)
            .toList();
    return Optional.of(
        new LoadStrength(Math.min(tensile, AwsFilletStress.E70_MPA), yield, beta, remarks));
  }

  /** A bar steel's strength goes with how it was rolled, drawn or heat-treated. */
  private static String assumed(String name) {
    return "assumption: the strength of "
        + name
        + " goes with its delivery condition and is not listed here; it is counted as S235 (tensile"
        + " strength 360 MPa, yield 235 MPa) and a correlation factor of 1: check the certificate";
  }

  private static boolean isWeldableSteel(PartMaterial material) {
    if (material.certainty() == Certainty.UNKNOWN) {
      return false;
    }
    return grade(material)
        .map(Grade::family)
        .map(
            family ->
                switch (family) {
                  case CARBON, QUENCHED_AND_TEMPERED, STAINLESS -> true;
                  case ALUMINIUM, CAST_IRON -> false;
                })
        .orElse(false);
  }

  private static Optional<Grade> grade(PartMaterial material) {
    return Grades.find(material.designation());
  }

  private static double least(Stream<Optional<OptionalDouble>> strengths, double unknown) {
    return strengths
        .mapToDouble(s -> s.orElse(OptionalDouble.empty()).orElse(unknown))
        .min()
        .orElseThrow();
  }
}
