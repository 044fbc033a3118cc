package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.counterpull.heat.solve.Probe;
import org.counterpull.heat.solve.Simulation;
import org.counterpull.plan.PlanHeat;
import org.counterpull.plan.PlanHeat.PassStart;
import org.counterpull.plan.PlanHeat.Spot;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Weldment;

/** Puts into a plan what a trial in the full model found. */
final class PlanHeats {
  /** Points of a curve in the plan: more than a page of paper can show. */
  private static final int POINTS = 160;

  private final Weldment weldment;
  private final SuperposedWaits superposed;

  PlanHeats(Weldment weldment, SuperposedWaits superposed) {
    this.weldment = weldment;
    this.superposed = superposed;
  }

  /**
   * Where temperatures were noted.
   *
   * @param guarded features
   * @param features a probe for each of them
   * @param lines probes along each run
   * @param zeroS begin of the simulation in the job
   */
  record Traces(
      List<Guarded> guarded, List<Probe> features, Map<String, List<Probe>> lines, double zeroS) {}

  PlanHeat of(
      Resolution resolution,
      Simulation simulation,
      List<PassStart> starts,
      Traces traces,
      List<String> notes) {
    List<Spot> spots = new ArrayList<>();
    for (int n = 0; n < traces.guarded().size(); n++) {
      Guarded feature = traces.guarded().get(n);
      Probe probe = traces.features().get(n);
      List<String> advice = advice(n, feature, probe);
      Optional<Double> limit = feature.place().limitC();
      String name = feature.place().name();
      spots.add(spot(name, true, limit, feature.takenOut(), probe, advice, traces.zeroS()));
    }
    traces
        .lines()
        .forEach(
            (run, probes) ->
                spots.add(
                    spot(
                        run,
                        false,
                        Optional.empty(),
                        false,
                        probes.get(probes.size() / 2),
                        List.of(),
                        traces.zeroS())));
    List<String> all = new ArrayList<>(notes);
    if (!weldment.joints().isEmpty()) {
      all.add(
          "Fitted faces conduct "
              + (int) Bench.value("fitted faces")
              + " W/m2K (common practice, no source).");
    }
    return new PlanHeat(
        resolution.word(),
        simulation.model().cells(),
        simulation.steps(),
        simulation.balance().imbalance(),
        starts,
        spots,
        all);
  }

  private Spot spot(
      String name,
      boolean feature,
      Optional<Double> limit,
      boolean out,
      Probe probe,
      List<String> advice,
      double zeroS) {
    List<Double> times = new ArrayList<>();
    List<Double> temps = new ArrayList<>();
    for (double timeS : thinned(probe)) {
      times.add(timeS + zeroS);
      temps.add(probe.atC(timeS));
    }
    return new Spot(
        name,
        feature,
        limit,
        out,
        probe.peakC(),
        probe.peakTimeS() + zeroS,
        limit.map(probe::timeAboveS).orElse(0.0),
        advice,
        times,
        temps);
  }

  /** The highest and the lowest of so many notes each, the first and the last: peaks stay. */
  private static TreeSet<Double> thinned(Probe probe) {
    double[] times = probe.timesS();
    double[] temps = probe.tempsC();
    TreeSet<Double> kept = new TreeSet<>(List.of(times[0], times[times.length - 1]));
    int each = Math.max(1, 2 * times.length / POINTS);
    for (int from = 0; from < times.length; from += each) {
      int high = from;
      int low = from;
      for (int n = from; n < Math.min(times.length, from + each); n++) {
        high = temps[n] > temps[high] ? n : high;
        low = temps[n] < temps[low] ? n : low;
      }
      kept.add(times[high]);
      kept.add(times[low]);
    }
    return kept;
  }

  private List<String> advice(int n, Guarded feature, Probe probe) {
    Optional<Double> limit = feature.place().limitC().filter(c -> probe.peakC() > c);
    if (limit.isEmpty()) {
      return List.of();
    }
    String name = feature.place().name();
    if (feature.takenOut()) {
      return List.of(
          words(
              "%s is out while this is welded; put it back when its seat is below %.0f C.",
              name, limit.get()));
    }
    List<String> advice = new ArrayList<>();
    double alone = superposed.alonePeakC(n);
    if (feature.feature().kind() == Feature.Kind.COATING) {
      advice.add("Strip it wider, and coat again afterwards.");
      return advice;
    }
    if (alone > limit.get()) {
      advice.add(
          words(
              "Waiting does not help: one pass alone, on cold work, takes it to about %.0f C. Weld with more and smaller passes, and let the work cool between them.",
              alone));
    }
    advice.add("Lay a wet rag or clamp a copper block between the weld and it.");
    advice.add(
        "Best: take it out before the first arc; if it can be, write removable: true in the file.");
    return advice;
  }

  private static String words(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
