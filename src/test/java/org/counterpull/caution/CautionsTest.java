package org.counterpull.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.JointForm;
import org.counterpull.order.Job;
import org.counterpull.plan.Plan;
import org.counterpull.stock.Flat;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Side;
import org.junit.jupiter.api.Test;

/** Cautions show on what brings them up, and the five general ones always come first. */
class CautionsTest {
  private static Job plain() {
    return tee("S275JR", "base", WeldingProcess.MAG);
  }

  private static Job tee(String steel, String base, WeldingProcess process) {
    Job job = new Job().steel(steel).known();
    return job.part(base, new Flat(80, 10), 300, 0, 0, 0)
        .part("rib", new Flat(60, 10), 100, 0, 0, 35)
        .joint("tee", "rib", base, JointForm.TEE)
        .run("tee", Side.FRONT, new Vector3D(0, -5, 5), new Vector3D(100, -5, 5))
        .process(process)
        .add();
  }

  private static List<String> ids(Job job) {
    return Cautions.apply(job.weldment(), job.plans()).stream().map(Plan.Caution::id).toList();
  }

  @Test
  void a_plain_job_shows_the_general_cautions_alone() {
    assertThat(ids(plain())).containsExactly("K01", "K02", "K03", "K04", "K05", "K31");
  }

  @Test
  void the_first_five_always_come_first() {
    Job job = tee("S690QL", "lift cylinder", WeldingProcess.TIG).outdoors().load("tee", 5000);
    assertThat(ids(job).subList(0, 5)).containsExactly("K01", "K02", "K03", "K04", "K05");
  }

  @Test
  void triggers_of_the_model() {
    assertThat(ids(plain().load("tee", 5000))).contains("K34");
    assertThat(ids(plain().outdoors())).contains("K37");
    assertThat(ids(plain().preheat("tee", 100))).contains("K36");
    assertThat(ids(plain().check("axis", Check.Kind.COAXIAL, "rib", "base"))).contains("K29");
    assertThat(ids(tee("S690QL", "base", WeldingProcess.MAG))).contains("K27");
    assertThat(ids(tee("304", "base", WeldingProcess.TIG))).contains("K13", "K35");
    assertThat(ids(tee("EN-GJL-250", "base", WeldingProcess.MMA))).contains("K28");
    assertThat(ids(tee("S275JR", "base", WeldingProcess.TIG))).contains("K35");
    Optional<String> zinc = Optional.of("hot-dip zinc");
    assertThat(ids(plain().feature("skin", Feature.Kind.COATING, List.of("rib"), false, zinc)))
        .contains("K11", "K15", "K30");
  }

  @Test
  void an_unknown_steel_stops() {
    Job job = new Job().steel("unknown").part("pin", new Flat(20, 20), 100, 0, 0, 0);
    Plan.Caution caution =
        Cautions.apply(job.weldment(), List.of()).stream()
            .filter(c -> c.id().equals("K27"))
            .findFirst()
            .orElseThrow();
    assertThat(caution.because()).isEqualTo("pin is of unknown");
  }

  @Test
  void words_are_whole_words() {
    assertThat(ids(tee("S275JR", "lift-cylinder", WeldingProcess.MAG)))
        .contains("K08", "K09", "K23");
    assertThat(ids(tee("S275JR", "fuel tanks", WeldingProcess.MAG))).contains("K06", "K20");
    // "frame" holds "ram", "capital" holds "pit": neither is meant.
    assertThat(ids(tee("S275JR", "frame capital", WeldingProcess.MAG)))
        .doesNotContain("K08", "K09", "K17");
  }

  @Test
  void every_row_is_complete_and_every_trigger_used() {
    Set<Trigger> used = EnumSet.noneOf(Trigger.class);
    for (Cautions.Row row : Cautions.rows()) {
      assertThat(row.text()).endsWith(".");
      assertThat(row.basis()).isNotBlank();
      assertThat(row.words().isEmpty() && row.trigger() == Trigger.WORDS).isFalse();
      used.add(row.trigger());
    }
    assertThat(used).containsExactlyInAnyOrder(Trigger.values());
    // Thirty-six of the list, and wind.
    assertThat(Cautions.rows()).extracting(Cautions.Row::id).doesNotHaveDuplicates().hasSize(37);
  }
}
