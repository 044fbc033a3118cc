package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.counterpull.groove.GrooveArea;
import org.counterpull.jointplan.SweepBench.Row;
import org.counterpull.machine.ProcessLimits;
import org.counterpull.machine.Verdict;
import org.counterpull.procedure.ProcedureLibrary;
import org.counterpull.procedure.Range;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Joint plans over thickness 2 to 30 mm, joint, process and position: no hole, no nonsense. With
 * the system property {@code sweep=write} the table in docs is written anew; otherwise it must be
 * what the plans give today.
 */
class JointSweepTest {
  private static final Path TABLE = Path.of("docs", "joint-sweep.md");

  @TempDir static Path folder;

  private static List<Row> rows;

  @BeforeAll
  static void planAll() {
    rows = SweepBench.all(folder);
  }

  @Test
  void everyJointIsPlannedOrRefusedWithItsReason() {
    for (Row row : rows) {
      JointPlan plan = row.plan();
      assertThat(plan.preparation().how()).as(row.toString()).isNotBlank();
      assertThat(plan.preparation().reason()).as(row.toString()).isNotBlank();
      assertThat(plan.verdicts()).as(row.toString()).hasSize(1);
      if (plan.runs().isEmpty()) {
        assertThat(plan.refusals()).as(row.toString()).isNotEmpty();
        assertThat(plan.verdicts().get(0).verdict())
            .as(row.toString())
            .isIn(Verdict.NO, Verdict.TACK_ONLY);
        assertThat(plan.verdicts().get(0).whatWouldChangeIt()).as(row.toString()).isNotEmpty();
      }
    }
  }

  @Test
  void everyPassHasSettingsThatAHandAndTheMachineReach() {
    for (Row row : rows) {
      for (RunPlan run : row.plan().runs()) {
        assertThat(run.passes()).as(row.toString()).isNotEmpty();
        for (PassPlan pass : run.passes()) {
          assertThat(pass.area().value()).as(row.toString()).isBetween(0.5, 60.0);
          assertThat(pass.currentA()).as(row.toString()).isBetween(5.0, 300.0 + 1e-9);
          assertThat(pass.voltageV()).as(row.toString()).isBetween(9.0, 40.0);
          assertThat(pass.travelMmPerS())
              .as(row.toString())
              .isBetween(
                  ProcessLimits.slowestMmPerS(run.process(), run.position()) - 1e-9,
                  ProcessLimits.fastestMmPerS(run.process()) + 1e-9);
          assertThat(pass.coolingTime().value()).as(row.toString()).isFinite().isPositive();
          assertThat(pass.arcTimeS()).as(row.toString()).isFinite().isPositive();
          double energy = pass.voltageV() * pass.currentA() / pass.travelMmPerS() / 1000;
          assertThat(pass.arcEnergy().value()).as(row.toString()).isCloseTo(energy, within(1e-9));
        }
      }
    }
  }

  /** The current of a row's passes stays in the row, as far as the machine reaches it. */
  @Test
  void everyPassIsInsideItsRow() {
    for (Row row : rows) {
      for (RunPlan run : row.plan().runs()) {
        String id = run.procedure().replaceFirst("^row ", "").replaceFirst(";.*$", "");
        ProcedureLibrary.bundled()
            .byId(id)
            .ifPresent(
                procedure -> {
                  Range range = procedure.settings().currentA();
                  assertThat(run.passes())
                      .as(row + " " + id)
                      .filteredOn(p -> p.kind() != PassPlan.Kind.ROOT)
                      .allSatisfy(
                          p -> {
                            assertThat(p.currentA()).isLessThanOrEqualTo(range.high() + 1e-9);
                            boolean reached = run.machine().equals("cored") || range.low() <= 300;
                            if (reached && range.low() <= p.currentA() + 1e-9) {
                              assertThat(p.currentA()).isGreaterThanOrEqualTo(range.low() - 1e-9);
                            }
                          });
                });
      }
    }
  }

  /** Beads add up to the groove, the caps and, in a double form, the other side's groove. */
  @Test
  void beadsFillTheGroove() {
    int checked = 0;
    for (Row row : rows) {
      JointPlan plan = row.plan();
      boolean straight = plan.preparation().firstDepthMm() > 0;
      if (!straight || plan.runs().isEmpty()) {
        continue;
      }
      ChosenGroove chosen = SweepBench.groove(row);
      double gouged = plan.runs().size() > 1 ? WeldMetal.gougedMm2(chosen) : 0;
      double caps = 0;
      double laid = 0;
      for (RunPlan run : plan.runs()) {
        boolean first = run == plan.runs().get(0);
        if (!first && !chosen.isDouble()) {
          continue;
        }
        double leg =
            run.line().shape() == org.counterpull.contact.WeldLine.Shape.FILLET
                ? Math.min(10, row.thicknessMm() / 4.0)
                : 0;
        caps += WeldMetal.capMm2(first ? chosen.firstSide() : chosen.secondSide(), leg);
        laid += run.passes().stream().mapToDouble(p -> p.area().value()).sum();
      }
      assertThat(laid - caps)
          .as(row.toString())
          .isCloseTo(GrooveArea.mm2(chosen.groove()) + gouged, within(1e-9));
      checked++;
    }
    assertThat(checked).isGreaterThan(200);
  }

  /**
   * A form that both a thickness and the next one take needs no fewer passes in the thicker one.
   */
  @Test
  void moreThicknessNeverTakesFewerPassesOrLessPreheat() {
    compared(
        row -> true,
        (thin, thick) -> {
          assertThat(thick.plan().preheat().value())
              .as(thick.toString())
              .isGreaterThanOrEqualTo(thin.plan().preheat().value() - 1e-9);
          boolean same = thin.plan().preparation().kind() == thick.plan().preparation().kind();
          boolean both = !thin.plan().runs().isEmpty() && !thick.plan().runs().isEmpty();
          if (same && both) {
            assertThat(passes(thick)).as(thick.toString()).isGreaterThanOrEqualTo(passes(thin));
            assertThat(metalMm2(thick))
                .as(thick.toString())
                .isGreaterThanOrEqualTo(metalMm2(thin) - 1e-9);
          }
        });
  }

  /** Once a machine is too small for a joint it stays too small. */
  @Test
  void whatIsTooThickStaysTooThick() {
    compared(
        row -> true,
        (thin, thick) -> {
          if (thin.plan().runs().isEmpty()) {
            assertThat(thick.plan().runs()).as(thick.toString()).isEmpty();
          }
        });
  }

  private interface Comparison {
    void of(Row thin, Row thick);
  }

  private static void compared(Predicate<Row> which, Comparison comparison) {
    int compared = 0;
    for (Row thin : rows) {
      for (Row thick : rows) {
        boolean series =
            thin.form() == thick.form()
                && thin.stand() == thick.stand()
                && thin.machine().equals(thick.machine());
        if (series && thin.thicknessMm() < thick.thicknessMm() && which.test(thin)) {
          comparison.of(thin, thick);
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(3000);
  }

  private static int passes(Row row) {
    return row.plan().runs().stream().mapToInt(run -> run.passes().size()).sum();
  }

  private static double metalMm2(Row row) {
    return row.plan().runs().stream()
        .flatMap(run -> run.passes().stream())
        .mapToDouble(p -> p.area().value())
        .sum();
  }

  @Test
  void theTableShowsWhatThePlansGive() throws IOException {
    String table = SweepTable.of(rows);
    if ("write".equals(System.getProperty("sweep"))) {
      Files.writeString(TABLE, table);
    }
    assertThat(TABLE)
        .content()
        .as("write it anew: mvn test -Dtest=JointSweepTest -Dsweep=write")
        .isEqualTo(table);
  }
}
