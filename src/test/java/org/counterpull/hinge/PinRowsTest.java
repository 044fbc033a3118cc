package org.counterpull.hinge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PinLoad;
import org.counterpull.plan.PinRow;
import org.counterpull.plan.PinRow.Finish;
import org.counterpull.plan.PinRow.Turns;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.MovedPart;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.plan.PullAnswer.Station;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.reading.ReadResult;
import org.counterpull.reading.WeldmentReader;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Three barrels on a bar, with the shape written by hand. */
class PinRowsTest {
  private static final double EXACT = 1e-4;

  private static final String THREE =
      """
      weldment: three barrels
      steel: S275JR
      parts:
        bar: {stock: flat 60 x 12, length: 1000, start: [0, 0, 0]}
        one: {stock: round tube 30 x 6.5, length: 60, onto: bar, face: front, at: 100 from left, gap: 2}
        two: {like: one, at: middle}
        three: {like: one, at: 100 from right}
      joints:
        one: {between: [one, bar], weld: flare bevel, gap: 2}
        two: {like: one, between: [two, bar]}
        three: {like: one, between: [three, bar]}
      features:
        bores: {of: [one, two, three], kind: bore, diameter: 17, turns on: pin 16}
      checks:
        line: {coaxial: [one, two, three], within: 0.5}
      machines:
        mag: {process: mag, current: 30..250 A, duty: 60% at 250 A, supply: 400 V 16 A three-phase, wire: 1.0 mm G3Si1, gas: Ar + 18 CO2}
      """;

  @TempDir Path folder;

  // By hand: the middle barrel 0.4 mm up, the outer ones where they were. All six ends lie in a
  // cylinder of radius 0.2; of 1 mm of clearance 0.6 is left. The band's far end is twice as far:
  // 0.2 is left.
  @Test
  void threeBarrelsWithTheMiddleOneOffTurnWhereTheClearanceBearsIt() {
    PinRow row = row(THREE, 0.4, Optional.of(new Band(0.2, 0.1, 0.4)));
    assertThat(row.fit().zone().orElseThrow().expected()).isCloseTo(0.2, within(EXACT));
    assertThat(row.fit().left().orElseThrow().value()).isCloseTo(0.6, within(EXACT));
    assertThat(row.fit().leftAtWorst().orElseThrow().value()).isCloseTo(0.2, within(EXACT));
    assertThat(row.turns()).isEqualTo(Turns.YES);
    assertThat(row.finish().way()).isEqualTo(Finish.Way.AS_WELDED);
    assertThat(row.bores().get(1).left().orElseThrow().oneMm()).isCloseTo(0.2, within(1e-3));
    assertThat(row.bores().get(1).movedMm()).isCloseTo(0.4, within(1e-12));
    assertThat(row.shares()).extracting(Share::run).containsExactly("two/top");
  }

  // By hand: 0.8 mm up: radius 0.4, 0.2 left as expected; 2 x 0.8 at worst: 0.6 too little. In
  // line:
  // 1.6 + 0.1 of stock, so at most 15.3 before welding.
  @Test
  void twiceAsFarOffItIsMarginal() {
    PinRow row = row(THREE, 0.8, Optional.of(new Band(0.4, 0.2, 0.8)));
    assertThat(row.turns()).isEqualTo(Turns.MARGINAL);
    assertThat(row.fit().left().orElseThrow().value()).isCloseTo(0.2, within(EXACT));
    assertThat(row.fit().leftAtWorst().orElseThrow().value()).isCloseTo(-0.6, within(EXACT));
    assertThat(row.finish().way()).isEqualTo(Finish.Way.REAM_IN_LINE);
    assertThat(row.finish().beforeMm()).isCloseTo(15.2, within(0.101));
    assertThat(row.finish().beforeMm()).isLessThanOrEqualTo(17 - 1.6 - 0.1 + EXACT);
  }

  // By hand: 1.2 mm up: radius 0.6, 0.2 too little as expected.
  @Test
  void threeTimesAsFarOffItBinds() {
    PinRow row = row(THREE, 1.2, Optional.of(new Band(0.6, 0.3, 1.2)));
    assertThat(row.turns()).isEqualTo(Turns.NO);
    assertThat(row.fit().left().orElseThrow().value()).isCloseTo(-0.2, within(EXACT));
  }

  // By hand: closing of 0.3 on top of 2 x 0.4 = 0.8 is 0.1 more than 1 mm; without it, it goes.
  @Test
  void whereOnlyTheClosingIsInTheWayEachBoreIsReamed() {
    Finish finish =
        PinRows.finish(
            new PinRow.Fit(
                17,
                16,
                Optional.of(new Band(0.2, 0.1, 0.4)),
                0.3,
                Optional.empty(),
                Optional.empty()));
    assertThat(finish.way()).isEqualTo(Finish.Way.REAM_EACH);
    assertThat(finish.stockMm()).isEqualTo(0.3);
  }

  // The band of one run's angle, where no check on these bores gives a better one.
  @Test
  void withoutACoaxialCheckTheBandIsThatOfARun() {
    PinRow row = row(THREE, 0.4, Optional.empty());
    FactorBand factor = FactorBand.published(Effect.ANGLE).ofOneRun();
    assertThat(row.fit().zone().orElseThrow().high())
        .isCloseTo(0.2 * factor.median() * factor.within(), within(EXACT));
    assertThat(row.shares()).isEmpty();
  }

  @Test
  void withoutAShapeItCanNotBeTold() {
    Weldment weldment = read(THREE);
    PinRow row =
        PinRows.of(weldment, List.of(), List.of(), List.of(), Optional.empty(), Optional.empty())
            .get(0);
    assertThat(row.turns()).isEqualTo(Turns.UNTOLD);
    assertThat(row.finish().way()).isEqualTo(Finish.Way.UNTOLD);
  }

  // By hand: the bar is 60 deep towards the barrels; 8 x 60 x 0.6/(12e-6 x 860^2) = 32.45 K.
  @Test
  void theWarmBowIsThatOfTheBarThatCarriesTheRow() {
    PinRow row = row(THREE, 0.4, Optional.of(new Band(0.2, 0.1, 0.4)));
    assertThat(row.warm().carrier()).contains("bar");
    assertThat(row.bores().get(2).toMm()).isCloseTo(860, within(1e-9));
    assertThat(row.warm().bindsAtK().orElseThrow().value()).isCloseTo(32.45, within(0.01));
  }

  @Test
  void theEndsAreTackedFirst() {
    assertThat(row(THREE, 0, Optional.empty()).bench().tackOrder())
        .containsExactly("one", "three", "two");
  }

  private static final String LUGS =
      """
      weldment: two lugs
      steel: S275JR
      parts:
        pad: {stock: flat 80 x 10, length: 120, start: [0, 0, 0]}
        near: {stock: flat 50 x 10, length: 44, onto: pad, face: top, set: standing along, across: 14.5 from front}
        far: {like: near, across: 14.5 from back}
      joints:
        near: {between: [near, pad], weld: fillet, leg: 5, load: 5 kN}
        far: {between: [far, pad], weld: fillet, leg: 5, load: 5 kN}
      features:
        eye-1: {on: near, kind: hole, at: [20, 25, 5], axis: z, diameter: 16.5, turns on: pin 16}
        eye-2: {on: far, kind: hole, at: [20, 25, 5], axis: z, diameter: 16.5, turns on: pin 16}
      machines:
        mag: {process: mag, current: 30..250 A, duty: 60% at 250 A, supply: 400 V 16 A three-phase, wire: 1.0 mm G3Si1, gas: Ar + 18 CO2}
      """;

  // By hand, 10 kN on the pin, 15 kN design, eye 40 between lugs of 10, 0.5 play:
  // shear 7.5 of 0.6 x 201.06 x 600/1.25 = 57.91 kN; bearing 7.5 of 1.5 x 10 x 16 x 275 = 66 kN;
  // moment 15000/8 x (40 + 2 + 20) = 116.25 N m of 1.5 x 402.12 x 340 = 205.08 N m;
  // beyond the hole 7500/(2 x 10 x 275) + 11 = 12.36 mm of 44 - 20 - 8.25; beside it 6.86 of 16.75.
  @Test
  void aPinBetweenTwoLugsByHand() {
    Weldment weldment = read(LUGS);
    List<Part> lugs = List.of(weldment.part("near"), weldment.part("far"));
    PinLoad load =
        new LoadedPin(weldment, HandJoints.of(weldment), Row.of(weldment).get(0))
            .of()
            .orElseThrow();
    assertThat(lugs).hasSize(2);
    assertThat(load.forceN()).isEqualTo(10_000);
    assertThat(load.middleMm()).isCloseTo(40, within(1e-9));
    double[][] wanted = {
      {7500, 57_906},
      {7500, 66_000},
      {116_250, 205_083},
      {0.338, 1},
      {12.364, 15.75},
      {6.864, 16.75}
    };
    for (int i = 0; i < wanted.length; i++) {
      assertThat(load.uses().get(i).load()).isCloseTo(wanted[i][0], within(wanted[i][0] * 1e-3));
      assertThat(load.uses().get(i).allowed()).isCloseTo(wanted[i][1], within(wanted[i][1] * 1e-4));
    }
    assertThat(load.tooWeak()).isFalse();
    assertThat(load.weldsPlannedForLess()).isFalse();
  }

  // 32 mm at 16 MPa push 12.87 kN; the welds are planned for 10.
  @Test
  void aCylinderThatPushesHarderThanTheWeldsArePlannedForIsSaid() {
    String swing =
        """
        swings:
          lid:
            moves: near
            about: near
            to: 1 deg
            cylinder: {fixed at: [60, 40, -700], moving at: [55, 40, 30], bore: 32, rod: 20, closed: 500, stroke: 400, pressure: 160 bar}
        """;
    Weldment weldment = read(LUGS + swing);
    Row row = Row.of(weldment).get(0);
    Vector3D pin = row.holes().get(0).at();
    assertThat(pin.getX()).isCloseTo(60, within(15.0));
    PinLoad load = new LoadedPin(weldment, HandJoints.of(weldment), row).of().orElseThrow();
    assertThat(load.forceN()).isCloseTo(12_868, within(0.5));
    assertThat(load.weldsPlannedForLess()).isTrue();
  }

  private PinRow row(String text, double upMm, Optional<Band> band) {
    Weldment weldment = read(text);
    List<MovedPart> moved = new ArrayList<>();
    for (Part part : weldment.parts()) {
      Vector3D up = part.name().equals("two") ? new Vector3D(0, 0, upMm) : Vector3D.ZERO;
      moved.add(
          new MovedPart(
              part.name(), List.of(new Station(part.frame().origin(), up, Vector3D.ZERO))));
    }
    PullAnswer shape =
        new PullAnswer(
            weldment,
            NamedOrder.RULES,
            List.of(),
            Optional.empty(),
            band.map(b -> List.of(check(weldment.checks().get(0), b))).orElse(List.of()),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            moved,
            moved,
            List.of());
    return PinRows.of(
            weldment, List.of(), List.of(), List.of(), Optional.of(shape), Optional.empty())
        .get(0);
  }

  private static CheckAnswer check(Check check, Band band) {
    return new CheckAnswer(
        check,
        0.5,
        band,
        band,
        Verdict.YES,
        "",
        List.of(new Share("two/top", band.expected())),
        List.of(),
        band,
        List.of());
  }

  private Weldment read(String text) {
    try {
      Path file = folder.resolve("row.yaml");
      Files.writeString(file, text);
      ReadResult result = WeldmentReader.read(file);
      assertThat(result).as("%s", result).isInstanceOf(ReadResult.Read.class);
      return ((ReadResult.Read) result).weldment();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
