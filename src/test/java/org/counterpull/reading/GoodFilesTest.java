package org.counterpull.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.calibration.Effect;
import org.counterpull.calibration.FactorBand;
import org.counterpull.machine.FillerAtHand;
import org.counterpull.machine.Panel.Reading;
import org.counterpull.space.Face;
import org.counterpull.steel.Element;
import org.counterpull.weldment.Assumption;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial.Certainty;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Side;
import org.counterpull.weldment.Weldment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GoodFilesTest {
  private static final Path FOLDER = Path.of("src/test/resources/good");

  @TempDir Path folder;

  private static ReadResult.Read read(Path file) {
    ReadResult result = WeldmentReader.read(file);
    assertThat(result).as("%s", result).isInstanceOf(ReadResult.Read.class);
    return (ReadResult.Read) result;
  }

  private static Weldment everything() {
    return read(FOLDER.resolve("everything.yaml")).weldment();
  }

  @Test
  void jsonAndYamlAreOneModel() {
    assertThat(read(FOLDER.resolve("bar.json")).weldment())
        .isEqualTo(read(FOLDER.resolve("bar.yaml")).weldment());
  }

  @Test
  void inchesAndMillimetresAreOneModel() {
    assertThat(read(FOLDER.resolve("bar-inches.yaml")).weldment())
        .isEqualTo(read(FOLDER.resolve("bar.yaml")).weldment());
  }

  /** 36 in = 914.4 mm; 1/2 in = 12.7 mm; 1-1/4 in = 31.75 mm; gap 1/16 in = 1.5875 mm. */
  @Test
  void bareLengthsAreInTheFilesUnit() {
    Weldment weldment = read(Path.of("examples/hinge-bar.yaml")).weldment();
    assertThat(weldment.part("bar").lengthMm()).isCloseTo(914.4, within(1e-9));
    assertThat(weldment.part("bar").stock().upMm()).isCloseTo(12.7, within(1e-9));
    assertThat(weldment.part("hinge-left").stock().acrossMm()).isCloseTo(31.75, within(1e-9));
    assertThat(weldment.joint("left").gapMm()).isCloseTo(1.5875, within(1e-9));
  }

  @Test
  void everyKindOfMaterial() {
    Weldment weldment = everything();
    assertThat(weldment.part("deck").steel().certainty()).isEqualTo(Certainty.TYPICAL);
    assertThat(weldment.part("gusset").steel().certainty()).isEqualTo(Certainty.UNKNOWN);
    assertThat(weldment.part("rail").steel().certainty()).isEqualTo(Certainty.CERTIFIED);
    assertThat(weldment.part("rail").steel().composition().orElseThrow().of(Element.MN))
        .isEqualTo(1.4);
    assertThat(weldment.part("spare").steel().constants().orElseThrow().densityKgPerM3())
        .isEqualTo(7850);
    assertThat(weldment.part("deck").massKg()).contains(15.0);
  }

  @Test
  void endsAndJoints() {
    Weldment weldment = everything();
    Part rail = weldment.part("rail");
    assertThat(rail.left().degreesOffSquare()).isEqualTo(45);
    assertThat(rail.left().longSide()).contains(Face.FRONT);
    assertThat(rail.right().square()).isTrue();
    Joint joint = weldment.joint("rail");
    assertThat(joint.size()).contains(new Joint.GivenSize.Leg(5));
    assertThat(joint.sides()).containsExactly(Side.FRONT, Side.BACK);
    assertThat(joint.intermittent()).contains(new Joint.Intermittent(50, 100));
    assertThat(joint.loadN()).contains(8000.0);
    assertThat(weldment.joint("gusset").size()).contains(new Joint.GivenSize.Throat(4));
    assertThat(weldment.joint("gusset").fullPenetration()).isTrue();
    assertThat(weldment.joint("gusset").sides()).isEmpty();
    assertThat(weldment.joint("strut").weld()).isEqualTo(Joint.WeldKind.AUTO);
    assertThat(weldment.joint("boss").clearanceMm()).isEqualTo(1);
  }

  /** The first that covers a process counts; what none covers stays as published. */
  @Test
  void calibrations() {
    Weldment weldment = everything();
    assertThat(weldment.calibrations()).hasSize(2);
    assertThat(weldment.factor(WeldingProcess.MAG, Effect.ANGLE))
        .isEqualTo(new FactorBand(1.15, 1.21));
    assertThat(weldment.factor(WeldingProcess.MMA, Effect.ANGLE))
        .isEqualTo(FactorBand.published(Effect.ANGLE));
    assertThat(weldment.factor(WeldingProcess.MMA, Effect.ALONG))
        .isEqualTo(new FactorBand(1.05, 1.12));
    assertThat(weldment.assumptions())
        .contains(
            new Assumption(
                "calibration.mag",
                "the shop's own factors for mag, angle x 1.15 (0.95 to 1.39); from: tee of 8 mm"
                    + " with a fillet of 5 mm"));
  }

  /** (25, 20, 20) from the corner of a 40 mm tube is its middle line: (25, 0, 0). */
  @Test
  void featuresStandInPartAxes() {
    Feature bore = everything().features().get(0);
    assertThat(bore.parts()).containsExactly("boss", "boss-2");
    assertThat(bore.at().orElseThrow().toArray()).containsExactly(25, 0, 0);
    assertThat(bore.turnsOnMm()).contains(23.8);
    Feature seal = everything().features().get(1);
    assertThat(seal.limitC().orElseThrow()).isCloseTo(100, within(1e-9));
    assertThat(seal.removable()).isTrue();
  }

  @Test
  void likeCopiesAndOverrides() {
    Weldment weldment = everything();
    assertThat(weldment.part("boss-2").stock()).isEqualTo(weldment.part("boss").stock());
    assertThat(weldment.part("boss-2").frame()).isNotEqualTo(weldment.part("boss").frame());
    assertThat(weldment.joint("boss-2").clearanceMm()).isEqualTo(1);
    Feature seal = weldment.features().get(2);
    assertThat(seal.parts()).containsExactly("boss-2");
    assertThat(seal.material()).contains("nbr");
  }

  /** A placement written anew replaces the whole placement of the model, not only its key. */
  @Test
  void likeTakesOneWayOfPlacing() throws IOException {
    Path file = folder.resolve("w.yaml");
    Files.writeString(
        file,
        "parts:\n  a: {stock: flat 60 x 10, length: 100, start: [0, 0, 0], up: y, along: z,"
            + " loose: true}\n  b: {like: a, onto: a, face: top}\n"
            + "  c: {like: b, axis from: [0, 0, 0], axis to: [0, 70, 0]}\n");
    Weldment weldment = read(file).weldment();
    assertThat(weldment.part("b").lengthMm()).isEqualTo(100);
    assertThat(weldment.part("c").lengthMm()).isEqualTo(70);
  }

  @Test
  void checksHaveTheirTolerance() {
    Weldment weldment = everything();
    Check width = weldment.checks().get(0);
    assertThat(width.targetMm()).contains(400.0);
    assertThat(width.tolerance()).isEqualTo(new Check.Tolerance.Millimetres(1));
    assertThat(width.subjects().get(1).face()).contains(Face.BACK);
    assertThat(weldment.checks().get(1).tolerance()).isEqualTo(new Check.Tolerance.Iso13920('F'));
  }

  /** The file's own stick machine wins over the included one; the wire's 0.030 is in inches. */
  @Test
  void includesBringWhatAShopKeeps() {
    ReadResult.Read result = read(FOLDER.resolve("everything.yaml"));
    Weldment weldment = result.weldment();
    assertThat(weldment.machines())
        .extracting(m -> m.machine().name())
        .containsExactly("stick", "stick-2", "shop mag");
    ShopMachine stick = weldment.machines().get(0);
    assertThat(stick.machine().largestCurrentA()).isEqualTo(160);
    assertThat(stick.machine().processes()).containsExactly(WeldingProcess.MMA, WeldingProcess.TIG);
    assertThat(stick.machine().conversion().efficiency()).isEqualTo(0.82);
    assertThat(stick.machine().lead().orElseThrow().lengthM()).isEqualTo(25);
    assertThat(stick.machine().panel().dial(Reading.CURRENT).orElseThrow().position(85))
        .isEqualTo("5.5");
    assertThat(stick.machine().fillersFor(WeldingProcess.TIG))
        .extracting(FillerAtHand::designation)
        .containsExactly("W3Si1");
    assertThat(weldment.machines().get(1).place()).isEqualTo("neighbour's");
    ShopMachine mag = weldment.machines().get(2);
    assertThat(mag.machine().wiresMm().get(0)).isCloseTo(0.762, within(1e-9));
    assertThat(mag.machine().gas().co2Percent()).isEqualTo(18);
    assertThat(weldment.prices().orElseThrow().currency()).isEqualTo("EUR");
    assertThat(weldment.prices().orElseThrow().stockPerKg()).isEqualTo(1.6);
    assertThat(weldment.stockRoom().barMm()).isEqualTo(6100);
    assertThat(weldment.stockRoom().kerfMm()).isEqualTo(2);
    assertThat(weldment.surroundings().ambientC()).isEqualTo(10);
    assertThat(result.sources()).hasSize(2);
    assertThat(result.locations().at("machines.shop mag.gas").file())
        .isEqualTo(Path.of("src/test/resources/good/shop/shop.yaml").toString());
  }

  @Test
  void problemsOfAnIncludedFileAreFoundThere() throws IOException {
    Files.writeString(folder.resolve("shop.yaml"), "parts: {}\nmachines:\n  mag: {proces: mag}\n");
    Path file = folder.resolve("w.yaml");
    Files.writeString(
        file, "include: shop.yaml\nparts: {a: {stock: flat 60 x 10, length: 100, loose: true}}\n");
    var problems = ((ReadResult.Faulty) WeldmentReader.read(file)).problems();
    assertThat(problems).allMatch(p -> p.file().equals(folder.resolve("shop.yaml").toString()));
    assertThat(problems.get(0).what()).contains("does not belong in an included file");
    assertThat(problems)
        .anyMatch(p -> p.line() == 3 && p.column() == 9 && p.tryThis().contains("process?"));
  }

  @Test
  void includesInACircleAreNamed() throws IOException {
    Files.writeString(folder.resolve("a.yaml"), "include: b.yaml\nparts: {}\n");
    Files.writeString(folder.resolve("b.yaml"), "include: c.yaml\n");
    Files.writeString(folder.resolve("c.yaml"), "include: b.yaml\n");
    var problems = ((ReadResult.Faulty) WeldmentReader.read(folder.resolve("a.yaml"))).problems();
    assertThat(problems)
        .anyMatch(
            p ->
                p.file().endsWith("c.yaml")
                    && p.what().contains("b.yaml, ")
                    && p.what().contains("c.yaml"));
  }

  @Test
  void sequencesAndFixedRuns() {
    Weldment weldment = everything();
    assertThat(weldment.order().orElseThrow().steps())
        .extracting(s -> s.run())
        .containsExactly("rail/front", "rail/back", "gusset/front");
    assertThat(weldment.order().orElseThrow().steps().get(1).from()).contains(Face.LEFT);
    assertThat(weldment.order().orElseThrow().steps().get(2).startS()).contains(120.0);
    RunGiven front = weldment.runs().get(0);
    assertThat(front.heat().orElseThrow().kind()).isEqualTo(RunGiven.Heat.Kind.NET);
    assertThat(front.heat().orElseThrow().jPerMm()).isCloseTo(600, within(1e-9));
    assertThat(front.shrinkage().orElseThrow().angleRad())
        .isCloseTo(Math.toRadians(1), within(1e-12));
    RunGiven back = weldment.runs().get(1);
    assertThat(back.heat().orElseThrow().jPerMm()).isCloseTo(750, within(1e-9));
    assertThat(back.heat().orElseThrow().travelMmPerS()).isCloseTo(5, within(1e-9));
    // 24 V x 160 A x 0.8 at 5 mm/s; 3 kW at 5 mm/s.
    RunGiven gusset = weldment.runs().get(2);
    assertThat(gusset.heat().orElseThrow().kind()).isEqualTo(RunGiven.Heat.Kind.NET);
    assertThat(gusset.heat().orElseThrow().jPerMm()).isCloseTo(614.4, within(1e-9));
    RunGiven bead = weldment.runs().get(3);
    assertThat(bead.heat().orElseThrow().jPerMm()).isCloseTo(600, within(1e-9));
    assertThat(bead.heat().orElseThrow().source()).contains(new RunGiven.SourceBox(8, 8, 4));
    assertThat(bead.on().orElseThrow().from().toArray()).containsExactly(100, -50, 4);
    // (300, 200, 8) from the corner of a plate 400 wide and 8 thick: (300, 0, 4).
    assertThat(weldment.probes().get(0).at().toArray()).containsExactly(300, 0, 4);
    assertThat(weldment.before()).hasSize(2);
  }

  @Test
  void everyDefaultIsListed() {
    Weldment weldment = read(FOLDER.resolve("bar.yaml")).weldment();
    assertThat(weldment.assumptions())
        .extracting(a -> a.where())
        .contains("steel", "surroundings.ambient", "surroundings.turning over", "parts");
    assertThat(weldment.assumptions())
        .anyMatch(a -> a.where().equals("parts") && a.what().equals("across is middle, for tab"));
  }

  @Test
  void whatAMinimalFileLeavesOpenIsListed() throws IOException {
    Path file = folder.resolve("plate.yaml");
    Files.writeString(file, "parts: {a: {stock: plate 8, width: 100, length: 100, loose: true}}\n");
    Weldment weldment = read(file).weldment();
    assertThat(weldment.name()).isEqualTo("plate");
    assertThat(weldment.assumptions())
        .extracting(a -> a.where())
        .contains("weldment", "units", "steel", "parts.a");
  }

  /** A hinge: two pieces that only a pin joins are no mistake, and are named. */
  @Test
  void piecesThatOnlyPinsJoinAreNamed() {
    Weldment weldment = read(Path.of("examples/pit-cover.yaml")).weldment();
    assertThat(weldment.assumptions())
        .anyMatch(
            a ->
                a.where().equals("joints")
                    && a.what().contains("; front-rail, back-rail, left-side")
                    && a.what().contains("; fixed-bar, "));
  }

  @Test
  void locationsServeLaterChecks() {
    Locations locations = read(FOLDER.resolve("bar.yaml")).locations();
    Place leg = locations.at("joints.tab.leg");
    assertThat(leg.line()).isEqualTo(8);
    assertThat(leg.column()).isEqualTo(49);
    assertThat(locations.at("joints.tab.gap")).isEqualTo(locations.at("joints.tab"));
    assertThat(locations.at("joints.tab").column()).isEqualTo(3);
    assertThat(locations.at("joints.tab.between[2]").column()).isEqualTo(24);
    Problem problem = locations.problem("joints.tab.gap", "no contact: 3 mm apart", "gap: 3");
    assertThat(problem.line()).isEqualTo(8);
    assertThat(problem.path()).isEqualTo("joints.tab.gap");
  }

  @Test
  void readingTwiceGivesTheSame() {
    assertThat(everything()).isEqualTo(everything());
  }
}
