package org.counterpull.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.procedure.ProcedureBook;
import org.counterpull.stock.RoundTube;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Finds the welds of a weldment that lie on a round tube near something that heat or movement can
 * spoil.
 *
 * @param cases one for each such joint, file order
 * @param leftOut what was not looked at, in sentences
 */
public record MountCases(List<MountCase> cases, List<String> leftOut) {
  private static final double NEAR_MM = 150;

  public MountCases {
    cases = List.copyOf(cases);
    leftOut = List.copyOf(leftOut);
  }

  /** A joint on a tube with something near. */
  public record NearJoint(Joint joint, Part tube, Part partner, List<Feature> features) {
    public NearJoint {
      features = List.copyOf(features);
    }
  }

  /**
   * The cases.
   *
   * @param weldment the weldment
   * @param contacts how its parts meet
   * @param procedures starting settings
   * @param feature only what is near this one; empty for all
   * @param inside what is in the tubes
   */
  public static MountCases of(
      Weldment weldment,
      List<Contact> contacts,
      ProcedureBook procedures,
      Optional<String> feature,
      Inside inside) {
    List<String> leftOut = new ArrayList<>();
    List<MountCase> cases = new ArrayList<>();
    JointPlanner planner = new JointPlanner(weldment, procedures);
    for (NearJoint near : near(weldment, feature)) {
      Contact contact =
          contacts.stream()
              .filter(c -> c.joint().equals(near.joint().name()))
              .findFirst()
              .orElseThrow();
      JointPlan plan = planner.plan(near.joint(), contact);
      if (plan.runs().isEmpty()) {
        leftOut.add(
            near.joint().name() + ": no machine of the file welds it, so its heat is not known.");
        continue;
      }
      MountCase mount = new CaseOfJoint(weldment, near, plan, inside).mount();
      boolean close =
          mount.near().stream()
              .anyMatch(
                  s -> mount.seams().stream().anyMatch(w -> s.distanceMm(w.fromZMm()) <= NEAR_MM));
      if (close) {
        cases.add(mount);
      }
    }
    leftOut.addAll(notOnTubes(weldment, feature));
    return new MountCases(cases, leftOut);
  }

  /** What lies on other parts than round tubes, in sentences. */
  public static List<String> notOnTubes(Weldment weldment, Optional<String> feature) {
    return weldment.features().stream()
        .filter(f -> spoilt(f) && feature.map(f.name()::equals).orElse(true))
        .filter(f -> !f.parts().stream().allMatch(p -> tube(weldment.part(p))))
        .map(
            f ->
                f.name()
                    + ": not on a round tube; counterpull heat says how warm it gets, whether it keeps its"
                    + " size is not known.")
        .toList();
  }

  /** The joints on tubes that carry something to be spoilt; no heat is worked out for this. */
  public static List<NearJoint> near(Weldment weldment, Optional<String> feature) {
    List<NearJoint> all = new ArrayList<>();
    for (Joint joint : weldment.joints()) {
      Part second = weldment.part(joint.second());
      Part first = weldment.part(joint.first());
      for (Part part : List.of(second, first)) {
        List<Feature> here =
            weldment.features().stream()
                .filter(f -> spoilt(f) && f.parts().contains(part.name()))
                .toList();
        boolean asked = here.stream().anyMatch(f -> feature.map(f.name()::equals).orElse(true));
        if (tube(part) && asked) {
          all.add(new NearJoint(joint, part, part == second ? first : second, here));
          break;
        }
      }
    }
    return all;
  }

  private static boolean tube(Part part) {
    return part.stock() instanceof RoundTube;
  }

  private static boolean spoilt(Feature feature) {
    return switch (feature.kind()) {
      case BORE, SEAL, BEARING, THREAD, COATING -> true;
      case MACHINED_FACE, HOLE, GREASE_FITTING, CAPTIVE_PIECE, VESSEL, ACCUMULATOR, GAS_STRUT ->
          false;
    };
  }
}
