package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.counterpull.contact.ContactFinder;
import org.counterpull.contact.Fitting;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.mount.MountScreen;
import org.counterpull.plan.Plan;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;

/** A plan asks by itself whether something may be welded straight to a tube. */
class MountInPlanTest {
  private static List<MountScreen> asked(String example) {
    ReadResult.Read read =
        (ReadResult.Read) WeldmentReader.read(Path.of("examples", example + ".yaml"));
    Weldment weldment = read.weldment();
    Fitting fitting = ContactFinder.usual().find(weldment);
    JointPlanner planner = new JointPlanner(weldment, ProcedureLibrary.bundled());
    List<JointPlan> joints =
        fitting.contacts().stream().map(c -> planner.plan(weldment.joint(c.joint()), c)).toList();
    return MountScreen.of(weldment, joints);
  }

  // The lug lies over the swept bore, 45 mm from the seal; the cap is 80 mm from the bore, 350 mm
  // from the seal.
  @Test
  void theCradlesLugIsAskedAboutAndItsCapIsNot() {
    List<MountScreen> asked = asked("cradle");
    assertThat(asked).extracting(MountScreen::joint).containsExactly("lug");
    assertThat(asked.get(0).because())
        .contains("not straight on the tube", "gland seal is 45 mm away");
  }

  @Test
  void noQuestionWhereTheClearanceIsAmple() {
    assertThat(asked("pit-cover")).isEmpty();
    assertThat(asked("thick-bracket")).isEmpty();
  }

  @Test
  void thePlanCarriesTheQuestion() {
    Plan plan = PlannedFile.of(Path.of("examples/cradle.yaml")).plan();
    assertThat(plan.cautions()).extracting(Plan.Caution::id).contains("mount-lug");
  }
}
