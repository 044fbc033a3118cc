package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.Remedy;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.pull.search.Step;
import org.counterpull.weldment.RunGiven;
import org.counterpull.weldment.Weldment;

/**
 * What would bring a check nearer, each with what it is worth: the weldment is built anew with the
 * change and welded in the same order.
 */
final class Remedies {
  /** Weld metal and heat of a fillet one size smaller over its own: (4 / 5)2. */
  private static final double SMALLER = 0.64;

  private static final double STITCHED = 0.5;

  /** A pull too small to move anything: its run holds, but was never hot. */
  private static final RunGiven.Shrinkage NONE = new RunGiven.Shrinkage(0, 0, 0);

  private static final int MOST_STITCHED = 4;

  private final Weldment weldment;
  private final PullModel model;
  private final long seed;
  private final List<Step> order;
  private final Map<String, List<Spread.Band>> built = new HashMap<>();

  Remedies(Weldment weldment, PullModel model, long seed, List<Step> order) {
    this.weldment = weldment;
    this.model = model;
    this.seed = seed;
    this.order = List.copyOf(order);
  }

  /**
   * Those that do help, the most first.
   *
   * @param check its number
   * @param nowMm what is expected without any
   * @param byRun what each run moves it by, the most first
   */
  List<Remedy> of(int check, double nowMm, List<Share> byRun) {
    double sign = Math.signum(byRun.stream().mapToDouble(Share::mm).sum());
    List<String> pulling =
        byRun.stream().filter(share -> share.mm() * sign > 0).map(Share::run).toList();
    List<Remedy> all = new ArrayList<>();
    all.add(
        remedy(
            "every weld a size smaller (64 % of the heat, as a leg of 4 mm for one of 5)",
            check, names(), run -> less(run, SMALLER)));
    if (!pulling.isEmpty()) {
      List<String> most = pulling.subList(0, Math.min(MOST_STITCHED, pulling.size()));
      all.add(
          remedy(
              "stitches over half the length at " + String.join(", ", most),
              check,
              most,
              Remedies::stitched));
      joint(pulling.get(0))
          .ifPresent(
              joint ->
                  all.add(
                      remedy(
                          "joint " + joint + " bolted or set in cold instead of welded",
                          check,
                          runsOf(joint),
                          Remedies::cold)));
    }
    return all.stream()
        .filter(remedy -> Math.abs(remedy.leaves().expected()) < Math.abs(nowMm))
        .sorted(Comparator.comparingDouble(remedy -> Math.abs(remedy.leaves().expected())))
        .toList();
  }

  private List<String> names() {
    return model.runs().stream().map(PulledRun::name).toList();
  }

  private Optional<String> joint(String run) {
    return model.runs().stream()
        .filter(r -> r.name().equals(run))
        .findFirst()
        .flatMap(PulledRun::joint);
  }

  private List<String> runsOf(String joint) {
    return model.runs().stream()
        .filter(run -> run.joint().map(joint::equals).orElse(false))
        .map(PulledRun::name)
        .toList();
  }

  private Remedy remedy(
      String what, int check, List<String> names, Function<PulledRun, PulledRun> change) {
    Spread.Band band = built.computeIfAbsent(what, key -> bands(names, change)).get(check);
    return new Remedy(what, new Band(band.expected(), band.low(), band.high()));
  }

  private List<Spread.Band> bands(List<String> names, Function<PulledRun, PulledRun> change) {
    List<PulledRun> runs =
        model.runs().stream()
            .map(run -> names.contains(run.name()) ? change.apply(run) : run)
            .toList();
    PullModel changed = new PullModel(weldment, runs);
    Welded welded = Welded.of(changed, order, false);
    return new Spread(seed, weldment, changed).bands(changed.measures(), welded.released());
  }

  private static PulledRun less(PulledRun run, double factor) {
    return with(
        run,
        run.stretches(),
        run.passesJPerMm().stream().map(j -> factor * j).toList(),
        factor * run.weldAreaMm2(),
        run.given()
            .map(
                g ->
                    new RunGiven.Shrinkage(
                        factor * g.acrossMm(), factor * g.angleRad(), factor * g.alongN())));
  }

  /** Every stretch keeps its ends: a quarter of it at each, nothing between. */
  private static PulledRun stitched(PulledRun run) {
    List<PulledRun.Stretch> stitches = new ArrayList<>();
    for (PulledRun.Stretch stretch : run.stretches()) {
      double each = STITCHED / 2 * stretch.lengthMm();
      stitches.add(new PulledRun.Stretch(stretch.fromMm(), stretch.fromMm() + each));
      stitches.add(new PulledRun.Stretch(stretch.toMm() - each, stretch.toMm()));
    }
    return with(run, stitches, run.passesJPerMm(), run.weldAreaMm2(), run.given());
  }

  private static PulledRun cold(PulledRun run) {
    return with(run, run.stretches(), run.passesJPerMm(), run.weldAreaMm2(), Optional.of(NONE));
  }

  private static PulledRun with(
      PulledRun run,
      List<PulledRun.Stretch> stretches,
      List<Double> passesJPerMm,
      double weldAreaMm2,
      Optional<RunGiven.Shrinkage> given) {
    return new PulledRun(
        run.name(),
        run.joint(),
        run.kind(),
        run.path(),
        run.opening(),
        run.arm(),
        run.walls(),
        stretches,
        passesJPerMm,
        run.depthsMm(),
        weldAreaMm2,
        run.gapMm(),
        run.process(),
        given,
        run.tacks(),
        run.bench());
  }
}
