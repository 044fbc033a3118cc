package org.counterpull.order;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.steel.Family;
import org.counterpull.steel.Grade;
import org.counterpull.steel.Grades;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** When a rule that goes with a run applies. */
enum Circumstance {
  ALWAYS {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return true;
    }

    @Override
    boolean holds(Weldment weldment, Collection<String> parts) {
      return true;
    }
  },
  ALUMINIUM {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return holds(weldment, List.of(plan.joint().first(), plan.joint().second()));
    }

    @Override
    boolean holds(Weldment weldment, Collection<String> parts) {
      return parts.stream().map(weldment::part).anyMatch(Circumstance::isAluminium);
    }
  },
  ONE_OF_AN_EAR_PAIR {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return holds(weldment, List.of(plan.joint().first()));
    }

    @Override
    boolean holds(Weldment weldment, Collection<String> parts) {
      return EarPairs.of(weldment).stream()
          .anyMatch(pair -> pair.parts().stream().anyMatch(parts::contains));
    }
  },
  THICK_TO_THIN {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return thickestMm(run) >= 2 * thinnestMm(run);
    }
  },
  SEVERAL_PASSES {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return run.passes().size() > 1;
    }
  },
  LONG_AND_THIN {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return run.weldedMm() > LONG_MM && thinnestMm(run) < THIN_MM;
    }
  },
  HINGE_OF_A_ROW {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return !rows.links(plan.joint().first()).isEmpty();
    }
  },
  BEARING_ON_THE_PART {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return weldment.features().stream()
          .anyMatch(f -> f.kind() == Feature.Kind.BEARING && touches(f, plan.joint()));
    }
  },
  SENSITIVE_FEATURE_STAYS_IN {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return weldment.features().stream()
          .anyMatch(
              f ->
                  (f.kind() == Feature.Kind.SEAL || f.kind() == Feature.Kind.BEARING)
                      && !f.removable()
                      && touches(f, plan.joint()));
    }
  },
  THICK_OR_PREHEATED {
    @Override
    boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run) {
      return thickestMm(run) > THICK_MM
          || run.preheatC().value() > Math.max(weldment.surroundings().ambientC(), ROOM_C);
    }
  };

  private static final double LONG_MM = 300;
  private static final double THIN_MM = 6;
  private static final double THICK_MM = 20;
  private static final double ROOM_C = 20;

  /** True when it holds for a run. */
  abstract boolean holds(Weldment weldment, HingeRows rows, JointPlan plan, RunPlan run);

  /** True when it holds for a step that is no run, at some parts. */
  boolean holds(Weldment weldment, Collection<String> parts) {
    return false;
  }

  static boolean isAluminium(Part part) {
    return Grades.find(part.steel().designation())
        .map(Grade::family)
        .filter(Family.ALUMINIUM::equals)
        .isPresent();
  }

  static Circumstance of(String words) {
    return valueOf(words.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  private static double thinnestMm(RunPlan run) {
    return Math.min(run.line().firstWallMm(), run.line().secondWallMm());
  }

  private static double thickestMm(RunPlan run) {
    return Math.max(run.line().firstWallMm(), run.line().secondWallMm());
  }

  private static boolean touches(Feature feature, Joint joint) {
    return feature.parts().contains(joint.first()) || feature.parts().contains(joint.second());
  }
}
