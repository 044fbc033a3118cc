package org.counterpull.caution;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Cavities;
import org.counterpull.steel.Element;
import org.counterpull.steel.Family;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.SpokenOf;
import org.counterpull.weldment.Swing;
import org.counterpull.weldment.Weldment;

/** What on a job brings a caution up. Each gives what it found, as the words behind "because". */
enum Trigger {
  ALWAYS {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return Optional.of("");
    }
  },
  WORDS {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return SpokenOf.first(weldment, words);
    }
  },
  CLOSED_CAVITY {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return Cavities.of(weldment, joints).stream()
          .map(cavity -> cavity.part() + " is closed at both ends")
          .findFirst();
    }
  },
  ZINC {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return SpokenOf.first(weldment, List.of("zinc", "galvanised", "galvanized", "galvanneal"));
    }
  },
  CHROMIUM {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return ofFamily(weldment, Family.STAINLESS)
          .or(() -> SpokenOf.first(weldment, List.of("chrome", "chromed", "hardfacing")));
    }
  },
  DEGREASING {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return ofKind(
          weldment,
          Feature.Kind.BEARING,
          Feature.Kind.SEAL,
          Feature.Kind.GREASE_FITTING,
          Feature.Kind.BORE,
          Feature.Kind.COATING);
    }
  },
  LIFTING {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return SpokenOf.first(
          weldment,
          List.of(
              "lift", "lifting", "hook", "jib", "hoist", "crane", "spreader", "davit", "sling"));
    }
  },
  HARD_OR_UNKNOWN_STEEL {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return weldment.parts().stream()
          .filter(Trigger::hardOrUnknown)
          .map(part -> part.name() + " is of " + part.steel().designation())
          .findFirst();
    }
  },
  CAST_IRON {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return ofFamily(weldment, Family.CAST_IRON);
    }
  },
  HINGED {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      Stream<String> turning =
          weldment.features().stream().filter(f -> f.turnsOnMm().isPresent()).map(Feature::name);
      Stream<String> rods =
          weldment.fixtures().stream()
              .filter(f -> f.kind() == Fixture.Kind.THROUGH_ROD)
              .map(Fixture::name);
      Stream<String> axes =
          weldment.checks().stream().filter(c -> c.kind() == Check.Kind.COAXIAL).map(Check::name);
      Stream<String> swings = weldment.swings().stream().map(Swing::name);
      return Stream.of(swings, turning, rods, axes)
          .flatMap(names -> names)
          .findFirst()
          .map(name -> name + " is something that turns");
    }
  },
  GRINDING {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return joints.stream()
          .filter(plan -> plan.preparation().firstDepthMm() > 0)
          .map(plan -> plan.joint().name() + " is prepared by grinding")
          .findFirst()
          .or(() -> ofKind(weldment, Feature.Kind.COATING));
    }
  },
  LOADED {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return weldment.joints().stream()
          .filter(joint -> joint.loadN().isPresent())
          .map(joint -> joint.name() + " carries a load")
          .findFirst();
    }
  },
  ALUMINIUM_OR_TIG {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return ofFamily(weldment, Family.ALUMINIUM)
          .or(
              () ->
                  runs(joints)
                      .filter(run -> run.process() == WeldingProcess.TIG)
                      .map(run -> run.name() + " is welded by TIG")
                      .findFirst());
    }
  },
  PREHEAT {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return joints.stream()
          .filter(plan -> plan.preheat().value() > weldment.surroundings().ambientC())
          .map(plan -> plan.joint().name() + " is preheated")
          .findFirst();
    }
  },
  SEALED_GAS {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return ofKind(weldment, Feature.Kind.GAS_STRUT, Feature.Kind.ACCUMULATOR)
          .or(() -> SpokenOf.first(weldment, words));
    }
  },
  VESSEL {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return ofKind(weldment, Feature.Kind.VESSEL).or(() -> SpokenOf.first(weldment, words));
    }
  },
  HYDRAULICS {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      return weldment.swings().stream()
          .filter(swing -> swing.cylinder().isPresent())
          .map(swing -> "a cylinder moves " + swing.name())
          .findFirst()
          .or(() -> SpokenOf.first(weldment, words));
    }
  },
  OUTDOORS {
    @Override
    Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words) {
      boolean outdoors = weldment.surroundings().outdoors();
      return outdoors ? Optional.of("it is welded outdoors") : Optional.empty();
    }
  };

  private static final double HIGH_CARBON_PERCENT = 0.3;

  /**
   * What brings it up, in words without a full stop; empty text for what always applies.
   *
   * @param words that a {@link #WORDS} trigger looks for
   */
  abstract Optional<String> because(Weldment weldment, List<JointPlan> joints, List<String> words);

  static Trigger of(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  private static Stream<RunPlan> runs(List<JointPlan> joints) {
    return joints.stream().map(JointPlan::runs).flatMap(Collection::stream);
  }

  private static Optional<String> ofFamily(Weldment weldment, Family family) {
    return weldment.parts().stream()
        .filter(part -> family(part).filter(family::equals).isPresent())
        .map(part -> part.name() + " is of " + part.steel().designation())
        .findFirst();
  }

  private static Optional<Family> family(Part part) {
    return Grades.find(part.steel().designation()).map(Grade::family);
  }

  private static boolean hardOrUnknown(Part part) {
    boolean highCarbon =
        part.steel().composition().filter(c -> c.of(Element.C) > HIGH_CARBON_PERCENT).isPresent();
    return part.steel().certainty() == PartMaterial.Certainty.UNKNOWN
        || highCarbon
        || family(part).filter(Family.QUENCHED_AND_TEMPERED::equals).isPresent();
  }

  private static Optional<String> ofKind(Weldment weldment, Feature.Kind... kinds) {
    List<Feature.Kind> wanted = List.of(kinds);
    return weldment.features().stream()
        .filter(feature -> wanted.contains(feature.kind()))
        .map(feature -> feature.name() + " is a " + feature.kind().words())
        .findFirst();
  }
}
