package org.counterpull.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import org.counterpull.jointplan.EdgePreparation;
import org.counterpull.jointplan.Filler;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.PassPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.jointplan.SteelAdvice;
import org.counterpull.jointplan.WeldSize;
import org.counterpull.position.WeldingPosition;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.space.Frame;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Assumption;
import org.counterpull.weldment.Before;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Joint;
import org.counterpull.weldment.MaterialConstants;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;
import org.counterpull.weldment.Prices;
import org.counterpull.weldment.ShopMachine;
import org.counterpull.weldment.Side;
import org.counterpull.weldment.Surroundings;
import org.counterpull.weldment.Weldment;
import org.counterpull.weldment.WrittenOrder;

/** Small weldments with hand-made joint plans, for tests. */
public final class Job {
  public static final double AMBIENT_C = 20;

  private final List<Part> parts = new ArrayList<>();
  private final Map<String, Joint> joints = new LinkedHashMap<>();
  private final Map<String, JointForm> forms = new LinkedHashMap<>();
  private final Map<String, List<RunPlan>> runs = new LinkedHashMap<>();
  private final Map<String, Double> preheats = new LinkedHashMap<>();
  private final List<Feature> features = new ArrayList<>();
  private final List<Check> checks = new ArrayList<>();
  private final List<Fixture> fixtures = new ArrayList<>();
  private final List<Before> before = new ArrayList<>();
  private final List<ShopMachine> machines = new ArrayList<>();
  private Optional<WrittenOrder> order = Optional.empty();
  private Optional<Prices> prices = Optional.empty();
  private String steel = "S275JR";
  private PartMaterial.Certainty certainty = PartMaterial.Certainty.UNKNOWN;
  private boolean outdoors;
  private Optional<Double> filmWPerM2K = Optional.empty();
  private Optional<MaterialConstants> constants = Optional.empty();

  /** A part along x, its axis starting there. */
  public Job part(String name, Stock stock, double lengthMm, double x, double y, double z) {
    return part(name, stock, lengthMm, new Vector3D(x, y, z), Vector3D.PLUS_I, Vector3D.PLUS_K);
  }

  public Job part(
      String name, Stock stock, double lengthMm, Vector3D at, Vector3D along, Vector3D up) {
    PartMaterial material = new PartMaterial(steel, certainty, Optional.empty(), constants);
    parts.add(
        new Part(
            name,
            stock,
            lengthMm,
            Frame.of(at, along, up),
            EndCut.SQUARE,
            EndCut.SQUARE,
            List.of(),
            material,
            false,
            Optional.empty()));
    return this;
  }

  public Job steel(String designation) {
    steel = designation;
    return this;
  }

  public Job joint(String name, String first, String second, JointForm form) {
    joints.put(
        name,
        new Joint(
            name,
            first,
            second,
            Joint.WeldKind.AUTO,
            Optional.empty(),
            List.of(),
            0,
            0,
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
    forms.put(name, form);
    runs.put(name, new ArrayList<>());
    return this;
  }

  public Job load(String name, double loadN) {
    Joint j = joints.get(name);
    joints.put(
        name,
        new Joint(
            name,
            j.first(),
            j.second(),
            j.weld(),
            j.size(),
            j.sides(),
            j.gapMm(),
            j.clearanceMm(),
            j.fullPenetration(),
            j.intermittent(),
            Optional.of(loadN),
            j.machine()));
    return this;
  }

  public Job preheat(String joint, double tempC) {
    preheats.put(joint, tempC);
    return this;
  }

  /** A run with usual settings, to be changed before {@link Run#add}. */
  public Run run(String joint, Side side, Vector3D start, Vector3D end) {
    return new Run(joint, side, start, end);
  }

  public Job feature(
      String name, Feature.Kind kind, List<String> on, boolean removable, double... size) {
    return feature(name, kind, on, removable, Optional.empty(), size);
  }

  public Job feature(
      String name,
      Feature.Kind kind,
      List<String> on,
      boolean removable,
      Optional<String> material,
      double... size) {
    features.add(
        new Feature(
            name,
            kind,
            on,
            Optional.empty(),
            Optional.empty(),
            size.length > 0 ? Optional.of(size[0]) : Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            material,
            Optional.empty(),
            size.length > 1 ? Optional.of(size[1]) : Optional.empty(),
            removable));
    return this;
  }

  public Job fixture(String name, Fixture.Kind kind, String... on) {
    fixtures.add(new Fixture(name, kind, List.of(on), List.of(), Optional.empty()));
    return this;
  }

  public Job check(String name, Check.Kind kind, String... on) {
    List<Check.Subject> subjects = new ArrayList<>();
    for (String part : on) {
      subjects.add(new Check.Subject(part, Optional.empty()));
    }
    checks.add(
        new Check(name, kind, subjects, new Check.Tolerance.Millimetres(0.5), Optional.empty()));
    return this;
  }

  public Job before(String earlier, String later) {
    before.add(new Before(earlier, later, Optional.of("The test says so.")));
    return this;
  }

  public Job machine(ShopMachine machine) {
    machines.add(machine);
    return this;
  }

  /** The steel of the parts that follow is what it is said to be. */
  public Job known() {
    certainty = PartMaterial.Certainty.TYPICAL;
    return this;
  }

  public Job film(double wPerM2K) {
    filmWPerM2K = Optional.of(wPerM2K);
    return this;
  }

  /** Properties of the parts that follow. */
  public Job metal(double conductivityWPerMK, double specificHeatJPerKgK, double densityKgPerM3) {
    constants =
        Optional.of(new MaterialConstants(conductivityWPerMK, specificHeatJPerKgK, densityKgPerM3));
    return this;
  }

  public Job outdoors() {
    outdoors = true;
    return this;
  }

  public Job prices(Prices given) {
    prices = Optional.of(given);
    return this;
  }

  public Job order(WrittenOrder.Step... steps) {
    order = Optional.of(new WrittenOrder(List.of(steps)));
    return this;
  }

  public Weldment weldment() {
    return new Weldment(
        "test",
        parts,
        List.copyOf(joints.values()),
        features,
        checks,
        machines,
        fixtures,
        new Surroundings(AMBIENT_C, filmWPerM2K, outdoors, true),
        prices,
        before,
        order,
        List.of(),
        List.of(),
        List.<Assumption>of());
  }

  public List<JointPlan> plans() {
    List<JointPlan> plans = new ArrayList<>();
    for (Joint joint : joints.values()) {
      List<RunPlan> here = runs.get(joint.name());
      plans.add(
          new JointPlan(
              joint,
              new Contact(
                  joint.name(),
                  forms.get(joint.name()),
                  100,
                  0,
                  here.stream().map(RunPlan::line).toList()),
              new EdgePreparation(
                  EdgePreparation.Kind.FILLET, 0, 0, 0, 0, 0, "", "Nothing.", "It fits.", "test"),
              new WeldSize(Optional.empty(), number(3.5, "mm"), true, "Given."),
              here.stream().map(RunPlan::filler).findFirst(),
              List.of(),
              here.stream().map(RunPlan::machine).findFirst(),
              List.of(),
              Optional.empty(),
              number(preheats.getOrDefault(joint.name(), AMBIENT_C), "C"),
              SteelAdvice.NONE,
              Optional.empty(),
              Optional.empty(),
              List.of(),
              List.of(),
              here));
    }
    return plans;
  }

  public WorkOrder order() {
    return (WorkOrder) result();
  }

  public OrderResult result() {
    return result((machine, currentA) -> 100);
  }

  public OrderResult result(DutyCycles duties) {
    return new OrderPlanner(HeatLedger.of(weldment(), plans()), duties)
        .plan(weldment(), plans(), List.of());
  }

  static Computed number(double value, String unit) {
    return new Formula("test", "test", unit, "test").result(value);
  }

  /** A run on its way into the job. */
  public final class Run {
    private final String joint;
    private final Side side;
    private final Vector3D start;
    private final Vector3D end;
    private WeldLine.Shape shape = WeldLine.Shape.FILLET;
    private String place = ShopMachine.HERE;
    private String machine = "shop mag";
    private Lay lay = Lay.AS_DRAWN;
    private int passes = 1;
    private double netHeatJPerMm = 400;
    private double arcS = 12;
    private double interpassMaxC = 250;
    private double wallMm = 10;
    private String hiddenBy = "";
    private WeldingProcess process = WeldingProcess.MAG;

    private Run(String joint, Side side, Vector3D start, Vector3D end) {
      this.joint = joint;
      this.side = side;
      this.start = start;
      this.end = end;
    }

    public Run butt() {
      shape = WeldLine.Shape.BUTT;
      return this;
    }

    public Run at(String otherPlace, String otherMachine) {
      place = otherPlace;
      machine = otherMachine;
      return this;
    }

    public Run turned() {
      lay = Lay.TURNED_OVER;
      return this;
    }

    public Run passes(int count) {
      passes = count;
      return this;
    }

    public Run heat(double jPerMm) {
      netHeatJPerMm = jPerMm;
      return this;
    }

    public Run arc(double seconds) {
      arcS = seconds;
      return this;
    }

    public Run interpass(double maxC) {
      interpassMaxC = maxC;
      return this;
    }

    public Run walls(double mm) {
      wallMm = mm;
      return this;
    }

    public Run hiddenBy(String part) {
      hiddenBy = part;
      return this;
    }

    public Run process(WeldingProcess other) {
      process = other;
      return this;
    }

    public Job add() {
      runs.get(joint).add(plan());
      return Job.this;
    }

    public RunPlan plan() {
      double lengthMm = end.distance(start);
      List<PassPlan> all = new ArrayList<>();
      for (int i = 1; i <= passes; i++) {
        all.add(
            new PassPlan(
                i,
                i,
                passes == 1 ? PassPlan.Kind.SINGLE : PassPlan.Kind.FILL,
                number(18, "mm2"),
                160,
                22,
                lengthMm / arcS,
                Optional.empty(),
                number(netHeatJPerMm / 800, "kJ/mm"),
                number(netHeatJPerMm / 1000, "kJ/mm"),
                number(netHeatJPerMm, "J/mm"),
                number(10, "s"),
                arcS));
      }
      WeldLine line =
          new WeldLine(
              joint + "/" + side.word(),
              joint,
              side,
              new LinePath.Straight(start, end),
              Vector3D.PLUS_K,
              90,
              shape,
              wallMm,
              wallMm,
              Optional.empty(),
              0,
              Map.of(Lay.AS_DRAWN, WeldingPosition.PB, Lay.TURNED_OVER, WeldingPosition.PB),
              hiddenBy.isEmpty()
                  ? new WeldLine.Reach(1, List.of())
                  : new WeldLine.Reach(0.2, List.of(hiddenBy)));
      return new RunPlan(
          line,
          machine,
          place,
          lay,
          WeldingPosition.PB,
          process,
          Optional.empty(),
          "test",
          new Filler("G3Si1", 0.8, "Ar + 18 CO2, 14 l/min", "electrode positive", "Dry."),
          lengthMm,
          all,
          number(preheats.getOrDefault(joint, AMBIENT_C), "C"),
          interpassMaxC);
    }
  }
}
