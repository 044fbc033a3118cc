package org.counterpull.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.counterpull.contact.ContactFinder;
import org.counterpull.contact.Fitting;
import org.counterpull.heat.solve.Progress;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.JointPlanner;
import org.counterpull.mount.MountScreen;
import org.counterpull.order.Operation;
import org.counterpull.order.Timed;
import org.counterpull.plan.Plan;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan asks by itself whether something may be welded straight to a tube. */
class MountInPlanTest {
  @TempDir Path folder;

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

  // The cradle's lug may not be welded to the barrel: the plan says so first, names the ways that
  // work and brings the steps of the one it takes.
  @Test
  void aWeldThatSpoilsABoreIsRefusedAndAnotherWayIsPlanned() {
    Plan plan = cradle(text -> text);
    assertThat(plan.refusals().get(0).where()).isEqualTo("lug");
    assertThat(plan.refusals().get(0).why()).contains("must not be welded", "0.039 mm: reject");
    assertThat(plan.refusals().get(0).wayForward())
        .contains("bolted or pinned mount (fits)", "sleeve, not welded to the tube");
    assertThat(plan.practice().mounts()).hasSize(1);
    assertThat(number(plan, "make-mount:lug")).isLessThan(number(plan, "tack:lug"));
    assertThat(number(plan, "fit-mount:lug")).isGreaterThan(number(plan, "cool"));
    assertThat(number(plan, "fit-mount:lug")).isLessThan(number(plan, "refit:gland seal"));
    assertThat(step(plan, "weld:lug/front").cautions())
        .contains("No arc on the tube: weld it to its bracket.");
  }

  // Without the bore only the seal is near, and it bears what it gets: nothing is refused and
  // nothing is made for it. Its smaller leg keeps the arc from going through the wall.
  @Test
  void aWeldThatSpoilsNothingStaysAsItIsDrawn() {
    Plan plan =
        cradle(
            text ->
                text.replaceFirst("(?m)^ *swept bore:.*$", "")
                    .replace("leg: 6, load: 12 kN", "leg: 4, load: 4 kN"));
    assertThat(plan.refusals()).isEmpty();
    assertThat(plan.practice().mounts()).extracting(m -> m.taken().word()).contains("as-drawn");
    assertThat(plan.operations()).noneMatch(t -> t.operation().id().startsWith("make-mount"));
  }

  // A thread in a flat: no ring, no shell; what isn't known is said.
  @Test
  void whatLiesOnOtherPartsThanTubesIsNamed() {
    Plan plan =
        cradle(
            text ->
                text.replaceFirst("(?m)^ *swept bore:.*$", "")
                    .replaceFirst(
                        "(?m)^ *gland seal:.*$",
                        "  tapped hole: {on: arm, kind: thread, at: [75, 20, 0], axis: z, diameter: 8}"));
    assertThat(plan.cautions()).filteredOn(c -> c.id().equals("mount-not-known")).hasSize(1);
    assertThat(plan.practice().mounts()).isEmpty();
  }

  private static int number(Plan plan, String id) {
    return plan.operations().stream()
        .filter(t -> t.operation().id().equals(id))
        .mapToInt(Timed::number)
        .findFirst()
        .orElseThrow();
  }

  private static Operation step(Plan plan, String id) {
    return plan.operations().stream()
        .map(Timed::operation)
        .filter(o -> o.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Plan cradle(UnaryOperator<String> change) {
    Path file = folder.resolve("cradle.yaml");
    try {
      Files.writeString(file, change.apply(Files.readString(Path.of("examples/cradle.yaml"))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Weldment weldment = ((ReadResult.Read) WeldmentReader.read(file)).weldment();
    return new Planner(ProcedureLibrary.bundled())
        .plan(
            weldment,
            ContactFinder.usual().find(weldment).contacts(),
            1,
            new Engines(Optional.empty(), true),
            Progress.NONE);
  }
}
