package org.counterpull.plan;

import java.util.List;
import java.util.Optional;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.mount.MountAnswer;
import org.counterpull.order.AccessLost;
import org.counterpull.order.AppliedRule;
import org.counterpull.order.Precedence;
import org.counterpull.order.Timed;
import org.counterpull.quantity.Computed;
import org.counterpull.swing.SwingResult;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Weldment;

/**
 * A plan for the bench.
 *
 * @param weldment what is built
 * @param seed the seed that the order was searched with
 * @param refusals what can't or mustn't be done, each with its reason and a way forward; empty when
 *     all can be done
 * @param cautions those that apply, the most important first
 * @param joints file order
 * @param runs in the order in which they are welded
 * @param preheat the highest preheat of the job and where it applies
 * @param operations the whole job in order
 * @param precedence every rule that bound the order
 * @param orderReasons why the runs are in this order, in sentences
 * @param consumables what is used up
 * @param cost what it costs; empty without prices
 * @param checks what must come out true
 * @param practice rules that had a say, access that is lost, what swings
 * @param heat temperatures over the job; empty where the waits come from closed forms
 * @param shape how far the checks will be off in this order and in others; empty without a check
 */
public record Plan(
    Weldment weldment,
    long seed,
    List<Refusal> refusals,
    List<Caution> cautions,
    List<JointPlan> joints,
    List<RunPlan> runs,
    Preheat preheat,
    List<Timed> operations,
    List<Precedence> precedence,
    List<String> orderReasons,
    Consumables consumables,
    Optional<Cost> cost,
    List<CheckPlan> checks,
    Practice practice,
    Optional<PlanHeat> heat,
    Optional<PullAnswer> shape) {

  public Plan {
    refusals = List.copyOf(refusals);
    cautions = List.copyOf(cautions);
    joints = List.copyOf(joints);
    runs = List.copyOf(runs);
    operations = List.copyOf(operations);
    precedence = List.copyOf(precedence);
    orderReasons = List.copyOf(orderReasons);
    checks = List.copyOf(checks);
  }

  /**
   * What practice says of the job.
   *
   * @param rules every rule that had a say
   * @param accessLost what no tool gets to any more after which step
   * @param swings what turns about a hinge axis
   * @param pins bores that pins turn in
   * @param mounts ways of fastening compared, one for each weld near something that it may spoil;
   *     empty where nothing is near or nobody asked
   */
  public record Practice(
      List<AppliedRule> rules,
      List<AccessLost> accessLost,
      List<SwingResult> swings,
      List<PinRow> pins,
      List<MountAnswer> mounts) {
    public static final Practice NONE =
        new Practice(List.of(), List.of(), List.of(), List.of(), List.of());

    public Practice {
      rules = List.copyOf(rules);
      accessLost = List.copyOf(accessLost);
      swings = List.copyOf(swings);
      pins = List.copyOf(pins);
      mounts = List.copyOf(mounts);
    }
  }

  /**
   * Something that can't or mustn't be done. Its texts end with a full stop.
   *
   * @param where joint, run, feature or machine
   * @param why the reason
   * @param wayForward what would change it
   */
  public record Refusal(String where, String why, String wayForward) {
    public Refusal {
      why = sentence(why);
      wayForward = sentence(wayForward);
    }

    private static String sentence(String text) {
      return text.isEmpty() || text.endsWith(".") ? text : text + ".";
    }
  }

  /**
   * A caution.
   *
   * @param id stable identifier
   * @param text in plain words
   * @param because what on this job brings it up; empty for those that always apply
   * @param basis regulation or standard that it stands on, or "common practice, no source"
   */
  public record Caution(String id, String text, String because, String basis) {}

  /**
   * Preheat of the job.
   *
   * @param highest the highest of all joints, deg C
   * @param joints names of the joints that need more than the ambient temperature
   * @param how how it is reached and measured, in sentences; empty when none is needed
   */
  public record Preheat(Computed highest, List<String> joints, List<String> how) {
    public Preheat {
      joints = List.copyOf(joints);
      how = List.copyOf(how);
    }
  }

  /**
   * What is used up, and how long it takes.
   *
   * @param fillers by designation and diameter
   * @param gasLitres shielding gas
   * @param energyKWh electricity
   * @param arcS arc-on time
   * @param elapsedS whole job, waits included
   * @param waitS waits alone
   * @param weldMetalKg in the joints
   * @param massKg of the finished weldment
   * @param cutList what is cut, from which bars
   */
  public record Consumables(
      List<FillerUse> fillers,
      Computed gasLitres,
      Computed energyKWh,
      double arcS,
      double elapsedS,
      double waitS,
      Computed weldMetalKg,
      Computed massKg,
      CutList cutList) {
    public Consumables {
      fillers = List.copyOf(fillers);
    }
  }

  /**
   * Filler to buy.
   *
   * @param designation class
   * @param diameterMm diameter
   * @param depositedKg what of it ends up in the joints
   * @param kg bought, losses included
   * @param pieces electrodes or rods, 0 for wire
   */
  public record FillerUse(
      String designation, double diameterMm, double depositedKg, Computed kg, int pieces) {}

  /**
   * Cost in one currency.
   *
   * @param currency as printed
   * @param labour people's time
   * @param filler wire, electrodes, rods
   * @param gas shielding gas
   * @param energy electricity
   * @param stock bars, tubes and plate bought
   * @param total sum
   */
  public record Cost(
      String currency,
      Computed labour,
      Computed filler,
      Computed gas,
      Computed energy,
      Computed stock,
      Computed total) {}

  /**
   * A check with what to expect.
   *
   * @param check what must come out true
   * @param toleranceMm its tolerance in mm (angles as mm over the measured length)
   * @param expectedMm expected value; empty until it has been computed
   * @param lowMm lower end of the 90 % band
   * @param highMm upper end of the 90 % band
   */
  public record CheckPlan(
      Check check,
      Computed toleranceMm,
      Optional<Double> expectedMm,
      Optional<Double> lowMm,
      Optional<Double> highMm) {}
}
