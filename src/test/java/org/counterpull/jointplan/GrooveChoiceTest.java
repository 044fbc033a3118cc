package org.counterpull.jointplan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.JointForm;
import org.counterpull.feeding.TransferMode;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.position.WeldingPosition;
import org.counterpull.procedure.BaseMaterial;
import org.counterpull.weldment.EdgeTool;
import org.counterpull.weldment.Joint.WeldKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms and dimensions from memory: ISO 9692-1:2013 and AWS D1.1. */
class GrooveChoiceTest {
  private static final WorkingPoint SHORT_ARC =
      new WorkingPoint(WeldingProcess.MAG, 1.0, 150, 21, 4.2, 100, TransferMode.SHORT_CIRCUIT);
  private static final WorkingPoint STICK =
      new WorkingPoint(WeldingProcess.MMA, 3.2, 120, 25, 1.7, 100, TransferMode.SPRAY);

  private static GrooveQuestion question(
      WeldKind asked, JointForm form, double t, boolean both, EdgeTool tool) {
    return new GrooveQuestion(
        asked,
        form,
        t,
        OptionalDouble.empty(),
        both,
        form == JointForm.BUTT ? WeldingPosition.PA : WeldingPosition.PB,
        SHORT_ARC,
        1.5,
        Optional.empty(),
        BaseMaterial.CARBON_STEEL,
        List.of(tool));
  }

  private static GrooveQuestion partial(
      WeldKind asked, boolean both, double throat, WeldingPosition position, WorkingPoint point) {
    return new GrooveQuestion(
        asked,
        JointForm.BUTT,
        20,
        OptionalDouble.of(throat),
        both,
        position,
        point,
        1.5,
        Optional.empty(),
        BaseMaterial.CARBON_STEEL,
        List.of(EdgeTool.GRINDER));
  }

  @ParameterizedTest
  @CsvSource({
    "BUTT, 8, true, GRINDER, V",
    "BUTT, 8, false, GRINDER, V",
    "BUTT, 12, true, GRINDER, DOUBLE_V",
    "BUTT, 12, false, GRINDER, V",
    "BUTT, 20, false, GRINDER, STEEP_V",
    "BUTT, 20, false, MILL, U",
    "BUTT, 30, true, GRINDER, DOUBLE_V",
    "BUTT, 30, true, MILL, DOUBLE_U",
    "TEE, 3, true, GRINDER, SQUARE",
    "TEE, 8, true, GRINDER, BEVEL",
    "TEE, 12, true, GRINDER, DOUBLE_BEVEL",
    "TEE, 20, false, GRINDER, STEEP_BEVEL",
    "TEE, 20, false, MILL, J",
    "TEE, 30, true, MILL, DOUBLE_J"
  })
  void formByThicknessAccessAndTool(
      JointForm form, double t, boolean both, EdgeTool tool, Kind kind) {
    ChosenGroove chosen = GrooveChoice.of(question(WeldKind.AUTO, form, t, both, tool));
    assertThat(chosen.kind()).isEqualTo(kind);
    assertThat(chosen.reason()).isNotBlank();
    assertThat(chosen.source()).startsWith("from memory").doesNotContain("to ISO");
  }

  @Test
  void aDoubleFormWithOneSideOpenBecomesTheSingleOne() {
    ChosenGroove chosen =
        GrooveChoice.of(question(WeldKind.DOUBLE_V, JointForm.BUTT, 20, false, EdgeTool.GRINDER));
    assertThat(chosen.kind()).isEqualTo(Kind.V);
    assertThat(chosen.reason()).contains("one side only");
    assertThat(chosen.notes()).anyMatch(n -> n.contains("prove it on a test piece"));
  }

  // Source: Watanabe and Satoh 1956, about 60 % of the deposit on the side that is welded first.
  @ParameterizedTest
  @CsvSource({"12", "16", "20", "25", "30"})
  void theFirstSideTakesSixTenths(double t) {
    ChosenGroove chosen =
        GrooveChoice.of(question(WeldKind.AUTO, JointForm.BUTT, t, true, EdgeTool.GRINDER));
    assertThat(
            FirstSideShare.firstShare(
                chosen.groove(), WeldMetal.CAP_MM, WeldMetal.gougedMm2(chosen.groove())))
        .isCloseTo(0.60, within(0.03));
    assertThat(chosen.groove().depthMm()).isGreaterThan(chosen.groove().secondDepthMm());
  }

  // Source: AWS D1.1, partial penetration, from memory: a 45 degree bevel loses 3 mm with stick,
  // and
  // with wire vertical or overhead; a 60 degree V loses nothing.
  @Test
  void partialPenetrationIsAsDeepAsItsThroatAsks() {
    WeldingPosition flat = WeldingPosition.PA;
    assertThat(GrooveChoice.of(partial(WeldKind.V, false, 8, flat, SHORT_ARC)).groove().depthMm())
        .isCloseTo(8, within(1e-9));
    assertThat(GrooveChoice.of(partial(WeldKind.BEVEL, false, 5, flat, STICK)).groove().depthMm())
        .isCloseTo(8, within(1e-9));
    assertThat(
            GrooveChoice.of(partial(WeldKind.BEVEL, false, 5, flat, SHORT_ARC)).groove().depthMm())
        .isCloseTo(5, within(1e-9));
    assertThat(
            GrooveChoice.of(partial(WeldKind.BEVEL, false, 5, WeldingPosition.PF, SHORT_ARC))
                .groove()
                .depthMm())
        .isCloseTo(8, within(1e-9));
    ChosenGroove both = GrooveChoice.of(partial(WeldKind.V, true, 6, flat, SHORT_ARC));
    assertThat(both.kind()).isEqualTo(Kind.DOUBLE_V);
    assertThat(both.groove().depthMm()).isEqualTo(both.groove().secondDepthMm()).isEqualTo(6);
    assertThat(both.gouged()).isFalse();
  }

  @Test
  void aThinPartialThroatIsPointedOut() {
    ChosenGroove chosen =
        GrooveChoice.of(partial(WeldKind.V, false, 4, WeldingPosition.PA, SHORT_ARC));
    assertThat(chosen.notes()).anyMatch(n -> n.contains("below the least"));
  }

  @Test
  void aRootRadiusWithoutAMillIsPointedOut() {
    assertThat(
            GrooveChoice.of(question(WeldKind.U, JointForm.BUTT, 20, true, EdgeTool.TORCH)).notes())
        .anyMatch(n -> n.contains("takes a mill"));
    assertThat(
            GrooveChoice.of(question(WeldKind.U, JointForm.BUTT, 20, true, EdgeTool.MILL)).notes())
        .isEmpty();
  }

  @Test
  void anUprightButtHasOneEdgeCut() {
    GrooveQuestion flat = question(WeldKind.AUTO, JointForm.BUTT, 8, true, EdgeTool.GRINDER);
    GrooveQuestion upright =
        new GrooveQuestion(
            flat.asked(),
            flat.form(),
            flat.thicknessMm(),
            flat.throatMm(),
            flat.bothSides(),
            WeldingPosition.PC,
            flat.point(),
            flat.fusedFaceMm(),
            flat.square(),
            flat.material(),
            flat.tools());
    assertThat(GrooveChoice.of(upright).kind()).isEqualTo(Kind.BEVEL);
  }
}
