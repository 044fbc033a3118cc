package org.counterpull.order;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.contact.JointForm;
import org.counterpull.cooling.Conductor;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.material.Metal;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMetal;
import org.counterpull.weldment.Weldment;

/**
 * Waits by closed forms: every pass is a heat put into its two parts at the instant of its end, and
 * each part conducts and loses it by itself.
 *
 * <p>Heat is shared between the parts as by their half-plates: tee and lap 2 h for the continuing
 * part and h for the other, else h each. <b>Source:</b> from memory: Okerblom; Vinokurov. Tacks and
 * preheat are left out.
 */
public final class HeatLedger implements WaitModel {
  private static final double LONGEST_WAIT_S = 24 * 3600;
  private static final double FINEST_S = 1;
  private static final double FIRST_GUESS_S = 16;
  private static final double[] ALONG = {0, 0.5, 1};

  private final double ambientC;
  private final double filmWeldingWPerM2K;
  private final double filmCoolingWPerM2K;
  private final Map<String, Conductor> metals = new HashMap<>();
  private final Map<String, Sheet> sheets = new HashMap<>();
  private final Map<String, JointPlan> joints = new HashMap<>();

  /** Places of runs on parts: part, then run. */
  private final Map<String, Map<String, Sheet.Patch>> patches = new HashMap<>();

  private HeatLedger(Weldment weldment, List<JointPlan> plans) {
    ambientC = weldment.surroundings().ambientC();
    var film = weldment.surroundings().filmWPerM2K();
    filmWeldingWPerM2K = film.orElseGet(() -> BenchTimes.value("film while welding"));
    filmCoolingWPerM2K = film.orElseGet(() -> BenchTimes.value("film while cooling"));
    for (Part part : weldment.parts()) {
      metals.put(part.name(), metal(part));
      sheets.put(part.name(), Sheet.of(part));
    }
    for (JointPlan plan : plans) {
      joints.put(plan.joint().name(), plan);
      for (String part : List.of(plan.joint().first(), plan.joint().second())) {
        Map<String, Sheet.Patch> here = patches.computeIfAbsent(part, p -> new HashMap<>());
        plan.runs().forEach(run -> here.put(run.name(), patch(part, run)));
      }
    }
  }

  private Sheet.Patch patch(String part, RunPlan run) {
    return sheets.get(part).patch(run.line().path());
  }

  /** The ledger of a weldment. */
  public static HeatLedger of(Weldment weldment, List<JointPlan> joints) {
    return new HeatLedger(weldment, joints);
  }

  private static Conductor metal(Part part) {
    Metal tabled = PartMetal.of(part);
    double meanC = BenchTimes.value("mean of warm metal");
    return part.steel()
        .constants()
        .map(
            c ->
                new Conductor(
                    c.conductivityWPerMK() / 1000,
                    c.specificHeatJPerKgK() * c.densityKgPerM3() / 1e9))
        .orElseGet(
            () ->
                new Conductor(
                    tabled.conductivityWPerMmK(meanC), tabled.heatCapacityJPerMm3K(meanC)));
  }

  @Override
  public double metalC(RunPlan next, List<Welded> history, double nowS) {
    return runC(next, history, nowS, filmWeldingWPerM2K);
  }

  @Override
  public double secondsBefore(RunPlan next, List<Welded> history, double nowS) {
    return secondsUntil(next.interpassMaxC(), nowS, timeS -> metalC(next, history, timeS));
  }

  @Override
  public double secondsUntilAllBelow(double tempC, List<Welded> history, double nowS) {
    List<RunPlan> runs = history.stream().map(Welded::run).distinct().toList();
    double longestS = 0;
    for (RunPlan run : runs) {
      // Only what is still too warm after the wait so far can make it longer.
      double soFarS = nowS + longestS;
      longestS +=
          secondsUntil(tempC, soFarS, timeS -> runC(run, history, timeS, filmCoolingWPerM2K));
    }
    return longestS;
  }

  @FunctionalInterface
  private interface TempAt {
    double tempC(double timeS);
  }

  private static double secondsUntil(double limitC, double nowS, TempAt metal) {
    if (metal.tempC(nowS) <= limitC) {
      return 0;
    }
    double tooSoonS = 0;
    double enoughS = FIRST_GUESS_S;
    while (metal.tempC(nowS + enoughS) > limitC) {
      tooSoonS = enoughS;
      enoughS *= 2;
      if (enoughS > LONGEST_WAIT_S) {
        return LONGEST_WAIT_S;
      }
    }
    while (enoughS - tooSoonS > FINEST_S / 2) {
      double middleS = (tooSoonS + enoughS) / 2;
      if (metal.tempC(nowS + middleS) > limitC) {
        tooSoonS = middleS;
      } else {
        enoughS = middleS;
      }
    }
    return Math.ceil(enoughS);
  }

  private double runC(RunPlan run, List<Welded> history, double timeS, double filmWPerM2K) {
    JointPlan plan = joints.get(run.line().joint());
    double first = partRiseK(plan.joint().first(), run, history, timeS, filmWPerM2K);
    double second = partRiseK(plan.joint().second(), run, history, timeS, filmWPerM2K);
    return ambientC + Math.max(first, second);
  }

  private double partRiseK(
      String part, RunPlan run, List<Welded> history, double timeS, double filmWPerM2K) {
    Sheet sheet = sheets.get(part);
    Map<String, Sheet.Patch> places = patches.get(part);
    Sheet.Patch here = places.get(run.name());
    double[] riseK = new double[ALONG.length];
    for (Welded welded : history) {
      double share = share(joints.get(welded.run().line().joint()), part, welded.run());
      if (share == 0) {
        continue;
      }
      double ageS = Math.max(FINEST_S, timeS - welded.endS());
      Sheet.Patch source = places.get(welded.run().name());
      for (int i = 0; i < ALONG.length; i++) {
        riseK[i] +=
            sheet.riseK(
                share * welded.netHeatJ(),
                source,
                here.uMm(ALONG[i]),
                here.vMm(ALONG[i]),
                ageS,
                metals.get(part),
                filmWPerM2K);
      }
    }
    return Math.max(riseK[0], Math.max(riseK[1], riseK[2]));
  }

  /** Share of a run's heat that goes into a part, 0 where it isn't one of the joint's. */
  private static double share(JointPlan plan, String part, RunPlan run) {
    double firstMm = run.line().firstWallMm();
    JointForm form = plan.contact().form();
    boolean continuing = form == JointForm.TEE || form == JointForm.LAP;
    double secondMm = (continuing ? 2 : 1) * run.line().secondWallMm();
    if (part.equals(plan.joint().first())) {
      return firstMm / (firstMm + secondMm);
    }
    return part.equals(plan.joint().second()) ? secondMm / (firstMm + secondMm) : 0;
  }
}
