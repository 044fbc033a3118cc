package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.counterpull.contact.Contact;
import org.counterpull.heat.block.Block;
import org.counterpull.heat.link.Link;
import org.counterpull.heat.superposed.LinearRange;
import org.counterpull.heat.superposed.Responses;
import org.counterpull.heat.superposed.Run;
import org.counterpull.heat.superposed.Target;
import org.counterpull.heatjob.Schedule.Arc;
import org.counterpull.heatjob.WeldedRun.Stretch;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.Operation;
import org.counterpull.order.ReadableWait;
import org.counterpull.order.WaitModel;
import org.counterpull.order.Welded;
import org.counterpull.weldment.Weldment;

/**
 * Waits by superposition: the rise that each run alone causes along every run's line and at every
 * feature, worked out once with all fits and tacks linked; then any order costs an addition for
 * each pass. Passes of a run differ by their heat only; tacks count as a little heat along the
 * line.
 */
public final class SuperposedWaits implements WaitModel {
  private static final double LONGEST_WAIT_S = 24 * 3600;
  private static final double HORIZON_S = 900;
  private static final double FINEST_S = 0.25;
  private static final double FIRST_GUESS_S = 16;
  private static final int SAMPLES = 5;

  /** Films are taken at these shares of the way from the air to the interpass limit. */
  private static final double MILD_SHARE = 0.46;

  private static final double HOT_SHARE = 1.2;

  /** The flame that holds a line warm counts as lit this long before the arc. */
  private static final double HELD_FOR_S = 30;

  private static final double PAST_S = 480;
  private static final int PAST_LOOKS = 4;

  /** A part's surface is this much less warm than its seam, as a share of the rise (by trial). */
  private static final double SURFACE_SHARE = 0.85;

  /** Heat gets no further than this within the horizon. */
  private static final double REACH_MM = 350;

  private static final double LOOK_S = 8;
  private static final double LOOK_RATIO = 1.3;
  private static final int LOOKS = 22;

  private final double ambientC;
  private final Map<String, WeldedRun> runs = new LinkedHashMap<>();
  private final Map<String, Integer> index = new LinkedHashMap<>();
  private final List<RunPlan> plans = new ArrayList<>();
  private final List<Guarded> guarded;
  private final Layout layout;
  private final Responses inMildAir;
  private final Responses inHotAir;
  private final double mildC;
  private final double hotC;
  private final Map<String, UnitFlame> flames = new LinkedHashMap<>();

  /** Tacks and flames so far. */
  private final List<Heat> warmth = new ArrayList<>();

  private final List<Welded> laid = new ArrayList<>();
  private final double[] keptOffK;
  private Optional<String> spared = Optional.empty();

  /** So many times the heat of a unit's response, from a time on; runs come first, then flames. */
  private record Heat(int unit, double times, double startS) {}

  /** A flame's place among the responses, and its heat. */
  private record UnitFlame(int unit, double energyJ) {}

  private SuperposedWaits(Weldment weldment, List<Contact> contacts, List<JointPlan> joints) {
    ambientC = weldment.surroundings().ambientC();
    RunHeats heats = new RunHeats(weldment, contacts, joints);
    for (JointPlan joint : joints) {
      for (RunPlan plan : joint.runs()) {
        WeldedRun run = heats.of(plan);
        if (!run.passes().isEmpty()) {
          index.put(plan.name(), runs.size());
          runs.put(plan.name(), run);
          plans.add(plan);
        }
      }
    }
    List<WeldedRun> all = List.copyOf(runs.values());
    guarded = Guarded.of(weldment, all);
    keptOffK = new double[guarded.size()];
    layout = Layout.of(weldment, all, Resolution.QUICK);
    double limitC = Math.max(lowestLimitC(all), ambientC + 20);
    mildC = ambientC + MILD_SHARE * (limitC - ambientC);
    hotC = ambientC + HOT_SHARE * (limitC - ambientC);
    List<Link> weldMetal = weldMetal(layout);
    List<Run> units = new ArrayList<>(all.stream().map(run -> unit(run, weldMetal)).toList());
    for (WeldedRun run : all) {
      warmed(run)
          .flatMap(preheatC -> Flame.unit(layout, run, preheatC, ambientC))
          .ifPresent(
              source -> {
                flames.put(run.name(), new UnitFlame(units.size(), source.energyJ()));
                units.add(new Run(source, weldMetal));
              });
    }
    List<Target> targets = targets(layout, all);
    List<Link> tacks = tackLinks(layout);
    inMildAir = responses(layout, tacks, units, targets, limitC, mildC);
    inHotAir = responses(layout, tacks, units, targets, limitC, hotC);
  }

  private Responses responses(
      Layout layout,
      List<Link> tacks,
      List<Run> units,
      List<Target> targets,
      double limitC,
      double filmAtC) {
    return Responses.of(
        layout.model(),
        tacks,
        units,
        targets,
        LinearRange.aboutWarmWork(ambientC, limitC, filmAtC),
        Resolution.QUICK.fineness(),
        HORIZON_S,
        REACH_MM);
  }

  /** The superposed model of a weldment; the work is done here. */
  public static SuperposedWaits of(
      Weldment weldment, List<Contact> contacts, List<JointPlan> joints) {
    return new SuperposedWaits(weldment, contacts, joints);
  }

  private static double lowestLimitC(List<WeldedRun> all) {
    return all.stream().mapToDouble(r -> r.interpassMaxC().orElse(250.0)).min().orElse(250);
  }

  private List<Link> tackLinks(Layout layout) {
    List<Link> links = new ArrayList<>();
    for (RunPlan plan : plans) {
      WeldedRun run = runs.get(plan.name());
      for (Stretch tack : PlannedSchedule.tacks(plan, run)) {
        Arc arc = new Arc(run, 0, run.passes().get(0), List.of(tack), 0);
        ArcInMetal.weldMetal(layout, arc).forEach(link -> links.add(link));
      }
    }
    return links;
  }

  /** The first pass, over the whole line where it is stitched. */
  private static Run unit(WeldedRun run, List<Link> weldMetal) {
    List<Stretch> whole = List.of(new Stretch(0, run.path().lengthMm()));
    Arc arc = new Arc(run, 1, run.passes().get(0), whole, 0);
    return new Run(ArcInMetal.sources(arc).get(0), weldMetal);
  }

  /** All weld metal of the job: what waits most is welded when most of it is in. */
  private List<Link> weldMetal(Layout layout) {
    List<Link> links = new ArrayList<>();
    for (WeldedRun run : runs.values()) {
      Arc arc = new Arc(run, 1, run.passes().get(0), run.stretches(), 0);
      links.addAll(ArcInMetal.weldMetal(layout, arc));
    }
    return links;
  }

  private List<Target> targets(Layout layout, List<WeldedRun> all) {
    List<Target> targets = new ArrayList<>();
    for (WeldedRun run : all) {
      for (RunLine.Point point : RunLine.of(layout, run, SAMPLES).points()) {
        targets.add(new Target(run.name(), point.block(), point.at()));
      }
    }
    for (Guarded feature : guarded) {
      Block block = layout.nearest(feature.place().part(), feature.place().at());
      targets.add(new Target(feature.place().name(), block, feature.place().at()));
    }
    return targets;
  }

  /** First target of each run, in order; the features come after all of them. */
  private int firstTarget(int run) {
    int first = 0;
    int n = 0;
    for (WeldedRun r : runs.values()) {
      if (n++ == run) {
        break;
      }
      first += SAMPLES * r.parts().size();
    }
    return first;
  }

  private Heat heat(Welded welded) {
    WeldedRun run = runs.get(welded.run().name());
    int pass = Math.min(welded.pass().number(), run.passes().size());
    boolean none = welded.pass().number() > run.passes().size();
    double times = none ? 0 : heatJ(run, pass) / unitJ(run);
    return new Heat(index.get(run.name()), times, welded.startS());
  }

  @Override
  public boolean knowsPreheat() {
    return true;
  }

  /** Nothing is warm yet when the job is gone through anew. */
  @Override
  public void jobBegins() {
    warmth.clear();
    laid.clear();
  }

  /** The flame went on until the arc started. */
  @Override
  public void laid(Welded welded) {
    WeldedRun run = runs.get(welded.run().name());
    UnitFlame flame = flames.get(welded.run().name());
    if (flame != null && welded.pass().number() == 1) {
      hold(run, flame, welded.startS());
    }
    laid.add(welded);
  }

  /** As much more of the flame as keeps the coolest point of the line warm. */
  private void hold(WeldedRun run, UnitFlame flame, double arcS) {
    List<Heat> heats = heats(laid);
    int first = firstTarget(index.get(run.name()));
    int count = SAMPLES * run.parts().size();
    double heldC = Flame.heldC(run.preheatC().orElseThrow());
    double times = 0;
    for (int target = first; target < first + count; target++) {
      double shortK = heldC - targetC(target, heats, arcS);
      double riseK = inMildAir.riseK(flame.unit(), target, HELD_FOR_S);
      times = Math.max(times, riseK > 0 ? shortK / riseK : 0);
    }
    if (times > 0) {
      warmth.add(new Heat(flame.unit(), times, arcS - HELD_FOR_S));
    }
  }

  private Optional<Double> warmed(WeldedRun run) {
    return run.preheatC().filter(preheatC -> preheatC > ambientC);
  }

  private static double heatJ(WeldedRun run, int pass) {
    return run.passes().get(pass - 1).netJPerMm() * run.weldedMm();
  }

  private static double unitJ(WeldedRun run) {
    return run.passes().get(0).netJPerMm() * run.path().lengthMm();
  }

  private List<Heat> heats(List<Welded> history) {
    List<Heat> heats = new ArrayList<>(warmth);
    history.forEach(welded -> heats.add(heat(welded)));
    return heats;
  }

  /**
   * Metal that has been hot for long lost heat to hot-air films, metal just warmed to milder ones:
   * blended by the mean temperature of the last minutes.
   */
  private double targetC(int target, List<Heat> heats, double timeS) {
    double mean = 0;
    for (int n = 0; n < PAST_LOOKS; n++) {
      double past = timeS - PAST_S * n / PAST_LOOKS;
      mean += sumC(inMildAir, target, heats, past) / PAST_LOOKS;
    }
    double surfaceC = ambientC + SURFACE_SHARE * (mean - ambientC);
    double hot = Math.max(0, Math.min(1, (surfaceC - mildC) / (hotC - mildC)));
    double mild = sumC(inMildAir, target, heats, timeS);
    return mild + hot * (sumC(inHotAir, target, heats, timeS) - mild);
  }

  private double sumC(Responses responses, int target, List<Heat> heats, double timeS) {
    double sum = ambientC;
    for (Heat heat : heats) {
      sum += heat.times() * responses.riseK(heat.unit(), target, timeS - heat.startS());
    }
    return sum;
  }

  private DoubleStream alongC(int run, List<Heat> heats, double timeS) {
    int first = firstTarget(run);
    int count = SAMPLES * runs.get(plans.get(run).name()).parts().size();
    return IntStream.range(first, first + count).mapToDouble(n -> targetC(n, heats, timeS));
  }

  private double lineC(int run, List<Heat> heats, double timeS) {
    return alongC(run, heats, timeS).max().orElseThrow();
  }

  @Override
  public double coolestC(RunPlan next, List<Welded> history, double nowS) {
    return alongC(index.get(next.name()), heats(history), nowS).min().orElseThrow();
  }

  @Override
  public double metalC(RunPlan next, List<Welded> history, double nowS) {
    return lineC(index.get(next.name()), heats(history), nowS);
  }

  @Override
  public double secondsBefore(RunPlan next, List<Welded> history, double nowS) {
    double metalS = metalS(next, history, nowS);
    double featureS = featuresS(next, history, nowS + metalS, feature -> 0);
    return ReadableWait.of(metalS + featureS);
  }

  /** Least wait for the interpass limit, not rounded. */
  double metalS(RunPlan next, List<Welded> history, double nowS) {
    List<Heat> heats = heats(history);
    int run = index.get(next.name());
    return secondsUntil(next.interpassMaxC(), nowS, timeS -> lineC(run, heats, timeS));
  }

  @Override
  public double secondsUntilAllBelow(double tempC, List<Welded> history, double nowS) {
    List<Heat> heats = heats(history);
    double longest = 0;
    for (int run = 0; run < plans.size(); run++) {
      int line = run;
      double soFarS = nowS + longest;
      longest += secondsUntil(tempC, soFarS, timeS -> lineC(line, heats, timeS));
    }
    return ReadableWait.of(longest);
  }

  @Override
  public Optional<String> spares(RunPlan next, List<Welded> history, double nowS) {
    double metalS = metalS(next, history, nowS);
    return featuresS(next, history, nowS + metalS, feature -> 0) > 0 ? spared : Optional.empty();
  }

  @Override
  public void done(Operation operation, double startS, double endS) {
    if (operation.kind() == Operation.Kind.PREHEAT) {
      flamed(operation, startS, endS);
      return;
    }
    for (RunPlan plan : plans) {
      if (plan.line().joint().equals(operation.where())) {
        WeldedRun run = runs.get(plan.name());
        double mm = PlannedSchedule.tacks(plan, run).stream().mapToDouble(Stretch::lengthMm).sum();
        double times = mm / run.path().lengthMm();
        warmth.add(new Heat(index.get(plan.name()), times, (startS + endS) / 2));
      }
    }
  }

  /** What another model knows better about a feature, by its place in the list, K. */
  interface Bias {
    double kelvin(int feature);

    /** How far to stay below its limit; below 0 for how far beyond it. */
    default double keptOffK(int feature) {
      return 0;
    }
  }

  /** One flame for a joint's tacks: its runs lie within each other's reach. */
  private void flamed(Operation operation, double startS, double endS) {
    for (RunPlan plan : plans) {
      UnitFlame flame = flames.get(plan.name());
      if (flame != null && Flame.isOn(operation, plan)) {
        WeldedRun run = runs.get(plan.name());
        double nowC = coolestC(plan, laid, startS);
        double needJ = Flame.evenNeedJ(layout, run, run.preheatC().orElseThrow(), nowC);
        int pulses = (int) Math.max(1, Math.ceil((endS - startS) / Flame.UNIT_S));
        for (int n = 0; n < pulses; n++) {
          double atS = startS + n * (endS - startS) / pulses;
          warmth.add(new Heat(flame.unit(), needJ / flame.energyJ() / pulses, atS));
        }
        return;
      }
    }
  }

  /**
   * How long to wait for the sake of features: until the next pass of the run no longer takes one
   * over its limit. A feature that the pass alone takes over its limit is not waited for.
   */
  double featuresS(RunPlan next, List<Welded> history, double nowS, Bias bias) {
    List<Heat> heats = heats(history);
    WeldedRun run = runs.get(next.name());
    int laid = (int) history.stream().filter(w -> w.run().name().equals(next.name())).count();
    int pass = Math.min(laid + 1, run.passes().size());
    double times = heatJ(run, pass) / unitJ(run);
    double longest = 0;
    spared = Optional.empty();
    for (int f = 0; f < guarded.size(); f++) {
      Guarded feature = guarded.get(f);
      if (!feature.waitedFor()) {
        continue;
      }
      int target = featureTarget(f);
      double known = Math.max(0, bias.kelvin(f));
      double limit = feature.place().limitC().orElseThrow() - bias.keptOffK(f);
      int n = index.get(next.name());
      DoubleUnaryOperator peak =
          startS -> known + peakC(target, heats, new Heat(n, times, startS), startS);
      boolean hopeless = peakC(target, List.of(), new Heat(n, times, 0), 0) > limit - 0.5;
      double seconds = hopeless ? 0 : secondsUntil(limit, nowS, peak);
      if (seconds > longest) {
        longest = seconds;
        spared =
            Optional.of(
                String.format(
                    java.util.Locale.ROOT,
                    "%s over its limit of %.0f C",
                    feature.place().name(),
                    limit));
      }
    }
    return longest;
  }

  /** The feature for which the last question gave the longest wait. */
  Optional<String> spared() {
    return spared;
  }

  /** What was learnt about a feature's limit. */
  double keptOffK(int feature) {
    return keptOffK[feature];
  }

  /** Stays further below a feature's limit. */
  void keepOff(int feature, double kelvin) {
    keptOffK[feature] += kelvin;
  }

  /** Whether no pass alone takes a feature over its limit. */
  boolean canBeSaved(int feature) {
    return alonePeakC(feature) <= guarded.get(feature).place().limitC().orElseThrow() - 1;
  }

  private int featureTarget(int feature) {
    return firstTarget(plans.size()) + feature;
  }

  /** Temperature of a feature. */
  double featureC(int feature, List<Welded> history, double timeS) {
    return targetC(featureTarget(feature), heats(history), timeS);
  }

  /** Highest temperature that any pass alone gives a feature in cold work. */
  double alonePeakC(int feature) {
    double highest = ambientC;
    for (RunPlan plan : plans) {
      WeldedRun run = runs.get(plan.name());
      for (int pass = 1; pass <= run.passes().size(); pass++) {
        Heat heat = new Heat(index.get(plan.name()), heatJ(run, pass) / unitJ(run), 0);
        highest = Math.max(highest, peakC(featureTarget(feature), List.of(), heat, 0));
      }
    }
    return highest;
  }

  private double peakC(int target, List<Heat> before, Heat next, double startS) {
    List<Heat> heats = new ArrayList<>(before);
    heats.add(next);
    double highest = -Double.MAX_VALUE;
    double sinceS = LOOK_S;
    for (int n = 0; n < LOOKS; n++) {
      highest = Math.max(highest, targetC(target, heats, startS + sinceS));
      sinceS *= LOOK_RATIO;
    }
    return highest;
  }

  private static double secondsUntil(double limitC, double nowS, DoubleUnaryOperator metal) {
    if (metal.applyAsDouble(nowS) <= limitC) {
      return 0;
    }
    double tooSoonS = 0;
    double enoughS = FIRST_GUESS_S;
    while (metal.applyAsDouble(nowS + enoughS) > limitC) {
      tooSoonS = enoughS;
      enoughS *= 2;
      if (enoughS > LONGEST_WAIT_S) {
        return LONGEST_WAIT_S;
      }
    }
    while (enoughS - tooSoonS > FINEST_S) {
      double middleS = (tooSoonS + enoughS) / 2;
      if (metal.applyAsDouble(nowS + middleS) > limitC) {
        tooSoonS = middleS;
      } else {
        enoughS = middleS;
      }
    }
    return enoughS;
  }
}
