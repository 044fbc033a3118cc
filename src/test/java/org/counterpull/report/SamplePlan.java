package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.contact.Contact;
import org.counterpull.contact.JointForm;
import org.counterpull.contact.Lay;
import org.counterpull.contact.LinePath;
import org.counterpull.contact.WeldLine;
import org.counterpull.feeding.ShieldingGas;
import org.counterpull.feeding.TransferMode;
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.EdgePreparation.Kind;
import org.counterpull.jointplan.Filler;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.jointplan.SteelAdvice;
import org.counterpull.jointplan.WeldSize;
import org.counterpull.machine.JointKind;
import org.counterpull.machine.Machine;
import org.counterpull.machine.MachineAssessor;
import org.counterpull.machine.WeldTask;
import org.counterpull.order.Operation;
import org.counterpull.order.Precedence;
import org.counterpull.order.Timed;
import org.counterpull.plan.CutList;
import org.counterpull.plan.Plan;
import org.counterpull.plan.PlanHeat;
import org.counterpull.position.WeldingPosition;
import org.counterpull.power.Conversion;
import org.counterpull.power.DutyPoint;
import org.counterpull.power.PlateDuty;
import org.counterpull.power.Supply;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.space.Frame;
import org.counterpull.stock.Flat;
import org.counterpull.stock.RoundTube;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Assumption;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Side;
import org.counterpull.weldment.Surroundings;
import org.counterpull.weldment.Weldment;

/**
 * A plan of twenty runs made by hand: five ribs on a base, two knuckles, a splice, a lug, a lap.
 * Its numbers are plausible and nothing more.
 */
final class SamplePlan {
  static final String HOSTILE = "<script>alert('x')</script>&\"|*`[a](b)\u0007";
  private static final String MACHINE = "shop mag";
  private static final Filler FILLER =
      new Filler("G 42 4 M21 3Si1", 0.8, "Ar + 18 % CO2, 14 l/min", "DC+", "Keep the spool dry.");

  private final String mark;
  private final List<Part> parts = new ArrayList<>();
  private final List<JointPlan> joints = new ArrayList<>();
  private final List<RunPlan> runs = new ArrayList<>();

  private SamplePlan(String mark) {
    this.mark = mark;
  }

  static Plan usual() {
    return new SamplePlan("").plan(List.of());
  }

  /** The same job, part of which can't be done. */
  static Plan refused() {
    return new SamplePlan("")
        .plan(
            List.of(
                new Plan.Refusal(
                    "splice", "no machine fuses its root", "bring it to a 250 A machine")));
  }

  /** The same job with names that try to be markup. */
  static Plan hostile() {
    return new SamplePlan(HOSTILE)
        .plan(List.of(new Plan.Refusal(HOSTILE, "because " + HOSTILE, "try " + HOSTILE)));
  }

  static Machine machine(String name) {
    return new Machine(
        name,
        List.of(WeldingProcess.MAG),
        30,
        200,
        new PlateDuty(List.of(new DutyPoint(200, 20))),
        new Supply(230, 16, 1),
        Conversion.CORRECTED,
        List.of(0.8),
        List.of(),
        ShieldingGas.ARGON_18_CO2);
  }

  static Computed number(String formula, double value, String unit) {
    return new Formula(formula, "a number of the sample", unit, "the sample itself").result(value);
  }

  private Plan plan(List<Plan.Refusal> refusals) {
    build();
    List<Timed> operations = operations();
    double end = operations.get(operations.size() - 1).endS();
    return new Plan(
        weldment(),
        7,
        refusals,
        cautions(),
        joints,
        runs,
        new Plan.Preheat(number("preheat-cet", 20, "C"), List.of(), List.of()),
        operations,
        List.of(new Precedence("tack", "weld:W1", "R01", "All is tacked first.", true)),
        List.of("The middle is welded before the ends" + mark + "."),
        new Plan.Consumables(
            List.of(
                new Plan.FillerUse(FILLER.designation(), 0.8, 1.05, number("mass", 1.23, "kg"), 0)),
            number("gas", 410, "l"),
            number("energy", 2.25, "kWh"),
            620,
            end,
            1500,
            number("mass", 1.05, "kg"),
            number("section-mass", 46.44444444, "kg"),
            CutList.EMPTY),
        Optional.of(
            new Plan.Cost(
                "EUR",
                number("cost", 150, "EUR"),
                number("cost", 4, "EUR"),
                number("cost", 3.3, "EUR"),
                number("cost", 0.7, "EUR"),
                number("cost", 0, "EUR"),
                number("cost", 158, "EUR"))),
        checks(),
        Plan.Practice.NONE,
        Optional.of(heat()),
        Optional.empty());
  }

  /** A seal that gets too hot, a bearing that is out, a pass that begins at its limit. */
  private PlanHeat heat() {
    List<Double> times = new ArrayList<>();
    List<Double> temps = new ArrayList<>();
    for (int n = 0; n < 40; n++) {
      times.add(3600.0 + 60 * n);
      temps.add(20 + 100 * Math.exp(-0.01 * (n - 12) * (n - 12)));
    }
    List<PlanHeat.PassStart> starts = new ArrayList<>();
    for (RunPlan run : runs) {
      double startS = 3600 + 120 * starts.size();
      Optional<Double> preheat = starts.isEmpty() ? Optional.of(75.0) : Optional.empty();
      starts.add(
          new PlanHeat.PassStart(
              run.name(), 1, startS, 80.0 + starts.size(), 70, preheat, 250, 12.34567, 11));
    }
    return new PlanHeat(
        "coarse",
        5000,
        700,
        1e-12,
        starts,
        List.of(
            new PlanHeat.Spot(
                "seal" + mark,
                true,
                Optional.of(100.0),
                false,
                120,
                4320,
                300,
                List.of("Clamp a copper block beside it" + mark + "."),
                times,
                temps),
            new PlanHeat.Spot(
                runs.get(0).name(),
                false,
                Optional.empty(),
                false,
                90,
                4300,
                0,
                List.of(),
                times,
                temps)),
        List.of("A note of the sample" + mark + "."));
  }

  private void build() {
    part("base", new Flat(120, 12), 900, new Vector3D(0, 0, 0), Vector3D.PLUS_I);
    part("splice", new Flat(120, 12), 200, new Vector3D(902, 0, 0), Vector3D.PLUS_I);
    for (int i = 0; i < 5; i++) {
      double x = 100 + 150 * i;
      part("rib-" + i, new Flat(100, 8), 80, new Vector3D(x, 0, 6), Vector3D.PLUS_K);
      pair("rib-" + i, "rib-" + i, "base", JointForm.TEE, WeldLine.Shape.FILLET, x, 3, 6, 1, 8);
    }
    for (int i = 0; i < 2; i++) {
      double x = 200 + 450 * i;
      part("knuckle-" + i, new RoundTube(30, 6.5), 60, new Vector3D(x, -77, 0), Vector3D.PLUS_I);
      flare("knuckle-" + i, x);
    }
    pair("splice", "splice", "base", JointForm.BUTT, WeldLine.Shape.BUTT, 901, 1, 6, 3, 12);
    part("lug", new Flat(80, 14), 90, new Vector3D(950, 0, 6), Vector3D.PLUS_K);
    pair("lug", "lug", "splice", JointForm.TEE, WeldLine.Shape.FILLET, 950, 7, 6, 4, 14);
    part("strap", new Flat(60, 8), 140, new Vector3D(990, 0, 10), Vector3D.PLUS_I);
    pair("strap", "strap", "splice", JointForm.LAP, WeldLine.Shape.FILLET, 1040, 4, 6, 1, 8);
  }

  private void part(String name, Stock stock, double length, Vector3D at, Vector3D along) {
    Vector3D up = along.equals(Vector3D.PLUS_K) ? Vector3D.PLUS_I : Vector3D.PLUS_K;
    parts.add(
        new Part(
            name + mark,
            stock,
            length,
            Frame.of(at, along, up),
            EndCut.SQUARE,
            EndCut.SQUARE,
            List.of(),
            new PartMaterial(
                "S275JR", PartMaterial.Certainty.TYPICAL, Optional.empty(), Optional.empty()),
            false,
            Optional.empty()));
  }

  /** Two runs across the base, one on either side of x. */
  private void pair(
      String name,
      String first,
      String second,
      JointForm form,
      WeldLine.Shape shape,
      double x,
      double half,
      double z,
      int passes,
      double wall) {
    List<RunPlan> both = new ArrayList<>();
    boolean butt = shape == WeldLine.Shape.BUTT;
    for (int side : new int[] {1, -1}) {
      Vector3D opening = butt ? new Vector3D(0, 0, side) : new Vector3D(side, 0, 1).normalize();
      double height = butt ? side * z : z;
      double off = butt ? 0 : side * half;
      both.add(
          run(
              name,
              side > 0 ? Side.RIGHT : Side.LEFT,
              new Vector3D(x + off, -50 * side, height),
              new Vector3D(x + off, 50 * side, height),
              opening,
              shape,
              passes,
              wall,
              Optional.empty()));
    }
    EdgePreparation preparation =
        butt
            ? edges(Kind.DOUBLE_V, 5, 5, 60, 2, 2, "")
            : passes > 2
                ? edges(Kind.DOUBLE_BEVEL, 5, 5, 45, 4, 0, first + mark)
                : edges(Kind.FILLET, 0, 0, 0, 0, 0, "");
    joint(name, first, second, form, preparation, butt ? 0 : passes > 2 ? 0 : 6, both);
  }

  private void flare(String name, double x) {
    List<RunPlan> both = new ArrayList<>();
    for (int side : new int[] {1, -1}) {
      both.add(
          run(
              name,
              side > 0 ? Side.TOP : Side.BOTTOM,
              new Vector3D(x, -61, side * 6),
              new Vector3D(x + 60, -61, side * 6),
              new Vector3D(0, -0.2, side).normalize(),
              WeldLine.Shape.FLARE_BEVEL,
              1,
              6.5,
              Optional.of(15.0)));
    }
    joint(name, name, "base", JointForm.TEE, edges(Kind.FLARE_BEVEL, 0, 0, 0, 0, 0, ""), 0, both);
  }

  private static EdgePreparation edges(
      Kind kind, double h1, double h2, double angle, double face, double gap, String part) {
    return new EdgePreparation(
        kind, h1, h2, angle, face, gap, part, "Grind to bright metal.", "It fuses.", "by hand");
  }

  private RunPlan run(
      String joint,
      Side side,
      Vector3D from,
      Vector3D to,
      Vector3D opening,
      WeldLine.Shape shape,
      int passes,
      double wall,
      Optional<Double> radius) {
    WeldLine line =
        new WeldLine(
            joint + mark + "/" + side.word(),
            joint + mark,
            side,
            new LinePath.Straight(from, to),
            opening,
            90,
            shape,
            wall,
            12,
            radius,
            0,
            Map.of(Lay.AS_DRAWN, WeldingPosition.PB),
            new WeldLine.Reach(1, List.of()));
    List<PassPlan> beads = new ArrayList<>();
    for (int i = 1; i <= passes; i++) {
      beads.add(pass(i, passes, to.distance(from)));
    }
    RunPlan run =
        new RunPlan(
            line,
            MACHINE + mark,
            ShopMachine.HERE,
            Lay.AS_DRAWN,
            WeldingPosition.PB,
            WeldingProcess.MAG,
            Optional.of(TransferMode.SPRAY),
            "by hand",
            FILLER,
            to.distance(from),
            beads,
            number("preheat-cet", 20, "C"),
            250);
    runs.add(run);
    return run;
  }

  private static PassPlan pass(int number, int of, double lengthMm) {
    PassPlan.Kind kind =
        of == 1
            ? PassPlan.Kind.SINGLE
            : number == 1
                ? PassPlan.Kind.ROOT
                : number == of ? PassPlan.Kind.CAP : PassPlan.Kind.FILL;
    return new PassPlan(
        number,
        Math.min(number, 2),
        kind,
        number("bead-area", 20 - number, "mm2"),
        190 + number,
        24.3,
        6.1,
        Optional.of(number("wire-feed", 12.0000004, "m/min")),
        number("arc-energy", 0.7567, "kJ/mm"),
        number("heat-input", 0.60536, "kJ/mm"),
        number("net-heat", 605, "J/mm"),
        new Formula("t85", "cooling time", "s", "the sample itself")
            .result(5.2, List.of("thickness 8 mm is outside 10 mm and more")),
        lengthMm / 6.1);
  }

  private void joint(
      String name,
      String first,
      String second,
      JointForm form,
      EdgePreparation preparation,
      double leg,
      List<RunPlan> both) {
    Joint joint =
        new Joint(
            name + mark,
            first + mark,
            second + mark,
            Joint.WeldKind.AUTO,
            Optional.empty(),
            List.of(),
            0,
            0,
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    double wall = both.get(0).line().firstWallMm();
    joints.add(
        new JointPlan(
            joint,
            new Contact(
                name + mark, form, 800, 0, both.stream().map(RunPlan::line).toList(), List.of()),
            preparation,
            new WeldSize(
                leg > 0 ? Optional.of(number("minimum-fillet", leg, "mm")) : Optional.empty(),
                number("throat", leg > 0 ? leg * 0.707 : 5, "mm"),
                false,
                "The least for the thickness."),
            Optional.of(FILLER),
            List.of(
                MachineAssessor.assess(
                    machine(MACHINE + mark), WeldTask.plates(JointKind.TEE, wall))),
            Optional.of(MACHINE + mark),
            List.of(number("cet", 0.25, "%")),
            Optional.of(number("haz-hardness", 304, "HV10")),
            number("preheat-cet", 20, "C"),
            SteelAdvice.NONE,
            Optional.empty(),
            Optional.empty(),
            List.of("Wrap the ends."),
            List.of(),
            both));
  }

  private List<Timed> operations() {
    List<Timed> timed = new ArrayList<>();
    add(timed, "cut", Operation.Kind.CUT, "Cut 2 x flat 120 x 12, 900 mm", Optional.empty(), 300);
    add(timed, "mask", Operation.Kind.MASK, "Mask the bores" + mark, Optional.empty(), 60);
    add(timed, "tack", Operation.Kind.TACK, "Tack all", Optional.empty(), 600);
    for (RunPlan run : runs) {
      add(
          timed,
          "weld:" + run.name(),
          Operation.Kind.WELD,
          "Weld " + run.name() + ", from the front",
          Optional.of(run.name()),
          run.arcTimeS() + 20);
      if (timed.size() % 5 == 0) {
        add(timed, "wait:" + timed.size(), Operation.Kind.WAIT, "Wait", Optional.empty(), 240);
      }
    }
    add(timed, "cool", Operation.Kind.COOL, "Let it cool below 50 C", Optional.empty(), 1800);
    add(timed, "measure", Operation.Kind.MEASURE, "Measure: flatness", Optional.empty(), 300);
    return timed;
  }

  private void add(
      List<Timed> timed,
      String id,
      Operation.Kind kind,
      String what,
      Optional<String> run,
      double seconds) {
    double start = timed.isEmpty() ? 0 : timed.get(timed.size() - 1).endS();
    timed.add(
        new Timed(
            timed.size() + 1,
            new Operation(
                id,
                kind,
                what,
                "",
                ShopMachine.HERE,
                List.of("Interpass wait: it ends when it is below 250 C" + mark + "."),
                kind == Operation.Kind.WELD ? List.of() : List.of("Mind your hands" + mark + "."),
                seconds,
                run),
            start,
            start + seconds));
  }

  private List<Plan.Caution> cautions() {
    List<Plan.Caution> cautions = new ArrayList<>();
    for (int i = 1; i <= 10; i++) {
      cautions.add(
          new Plan.Caution(
              "K" + i,
              "Clear or cover what can burn within 11 m.",
              i > 5 ? "the base" + mark : "",
              "common practice, no source"));
    }
    return cautions;
  }

  private List<Plan.CheckPlan> checks() {
    Check flat =
        new Check(
            "flatness" + mark,
            Check.Kind.FLAT,
            List.of(new Check.Subject("base" + mark, Optional.empty())),
            new Check.Tolerance.Millimetres(0.5),
            Optional.empty());
    Computed half = number("given", 0.5, "mm");
    return List.of(
        new Plan.CheckPlan(flat, half, Optional.empty(), Optional.empty(), Optional.empty()),
        new Plan.CheckPlan(flat, half, Optional.of(0.31), Optional.of(0.1), Optional.of(0.52)));
  }

  private Weldment weldment() {
    return new Weldment(
        "sample" + mark,
        parts,
        joints.stream().map(JointPlan::joint).toList(),
        List.of(),
        List.of(),
        List.of(new ShopMachine(machine(MACHINE + mark), ShopMachine.HERE)),
        List.of(),
        new Surroundings(20, Optional.empty(), false, true),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(new Assumption("machines." + MACHINE + mark, "efficiency 0.85: usual")));
  }
}
