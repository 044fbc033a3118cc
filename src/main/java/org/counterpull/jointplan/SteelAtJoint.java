package org.counterpull.jointplan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.counterpull.filler.Joined;
import org.counterpull.procedure.BaseMaterial;
import org.counterpull.quantity.Computed;
import org.counterpull.steel.CarbonEquivalent;
import org.counterpull.steel.Composition;
import org.counterpull.steel.Family;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.steel.HazHardness;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.PartMaterial.Certainty;

/**
 * The steel that governs a joint: the less weldable of the two parts.
 *
 * @param designation grade of the governing part
 * @param family which rules apply; empty when a part's steel is unknown
 * @param composition of the governing part, where carbon equivalents mean something
 * @param parts both parts
 */
record SteelAtJoint(
    String designation,
    Optional<Family> family,
    Optional<Composition> composition,
    List<Part> parts) {

  /** Hardness that the cooling gate keeps below: EN practice for hydrogen cracking, HV10. */
  private static final double HARD_HV = 350;

  private static final double LONGEST_T85_S = 100;

  static SteelAtJoint of(Part first, Part second) {
    List<PartMaterial> both = List.of(first.steel(), second.steel());
    Optional<PartMaterial> unknown =
        both.stream().filter(m -> m.certainty() == Certainty.UNKNOWN).findFirst();
    if (unknown.isPresent()) {
      return new SteelAtJoint(
          "unknown", Optional.empty(), Optional.empty(), List.of(first, second));
    }
    PartMaterial governing =
        both.stream().max(Comparator.comparingDouble(SteelAtJoint::hardening)).orElseThrow();
    return new SteelAtJoint(
        governing.designation(),
        Optional.of(family(governing)),
        governing.composition(),
        List.of(first, second));
  }

  private static double hardening(PartMaterial material) {
    return material.composition().map(c -> CarbonEquivalent.cet(c).value()).orElse(0.0);
  }

  private static Family family(PartMaterial material) {
    return Grades.find(material.designation()).map(Grade::family).orElse(Family.CARBON);
  }

  /** What is joined: the families of both parts together. */
  Joined joined() {
    return Joined.of(
        parts.stream()
            .map(Part::steel)
            .filter(m -> m.certainty() != Certainty.UNKNOWN)
            .map(SteelAtJoint::family)
            .toList());
  }

  /** Grades of both parts that are kept here. */
  List<Grade> grades() {
    return parts.stream()
        .map(p -> Grades.find(p.steel().designation()))
        .flatMap(Optional::stream)
        .toList();
  }

  /** CE(IIW), CET and Pcm; empty where they mean nothing. */
  List<Computed> carbonEquivalents() {
    return composition.stream()
        .flatMap(
            c ->
                Stream.of(
                    CarbonEquivalent.ceIIW(c), CarbonEquivalent.cet(c), CarbonEquivalent.pcm(c)))
        .toList();
  }

  /** Expected highest hardness beside the weld; empty where no composition is known. */
  Optional<Computed> hardness(double t85S) {
    return composition.map(c -> HazHardness.of(c, t85S));
  }

  /** Shortest t8/5 that keeps the heat-affected zone at or below 350 HV; empty where unknown. */
  OptionalDouble shortestT85S() {
    if (composition.isEmpty()) {
      return OptionalDouble.empty();
    }
    for (double t85S = 1; t85S <= LONGEST_T85_S; t85S *= 1.05) {
      if (HazHardness.of(composition.get(), t85S).value() <= HARD_HV) {
        return OptionalDouble.of(t85S);
      }
    }
    return OptionalDouble.of(LONGEST_T85_S);
  }

  /** The base material as procedures know it; a stainless part makes the weld stainless. */
  BaseMaterial baseMaterial() {
    return switch (joined()) {
      case CARBON, QUENCHED_AND_TEMPERED, CAST_IRON, NOTHING_TOGETHER -> BaseMaterial.CARBON_STEEL;
      case STAINLESS, STAINLESS_TO_CARBON -> BaseMaterial.STAINLESS_STEEL;
      case ALUMINIUM -> BaseMaterial.ALUMINIUM;
    };
  }
}
