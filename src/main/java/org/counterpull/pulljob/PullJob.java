package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.contact.Contact;
import org.counterpull.jointplan.JointPlan;
import org.counterpull.jointplan.RunPlan;
import org.counterpull.order.OrderPlanner;
import org.counterpull.order.OrderResult;
import org.counterpull.order.RunPrecedence;
import org.counterpull.order.WorkOrder;
import org.counterpull.plan.NamedOrder;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Compared;
import org.counterpull.plan.PullAnswer.MovedPart;
import org.counterpull.plan.PullAnswer.Preset;
import org.counterpull.plan.PullAnswer.Search;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.plan.PullAnswer.Station;
import org.counterpull.plan.PullAnswer.Taken;
import org.counterpull.plan.PullAnswer.Turn;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.plan.PullAnswer.Wanted;
import org.counterpull.pull.RunSequence;
import org.counterpull.pull.search.ExhaustiveSearch;
import org.counterpull.pull.search.FoundOrder;
import org.counterpull.pull.search.OrderProblem;
import org.counterpull.pull.search.OrderSearch;
import org.counterpull.pull.search.Step;
import org.counterpull.weldment.Weldment;

/** The shape of one job under any order of welding. */
public final class PullJob {
  /** Up to so many orders all of them are looked at. */
  private static final double MOST_LOOKED_AT = 50_000;

  private final Weldment weldment;
  private final long seed;
  private final PullModel model;
  private final RunSequence sequence;
  private final ShapeCost cost;
  private final Orders orders;
  private final Spread spread;
  private final List<Step> rules;

  private PullJob(
      Weldment weldment,
      List<PulledRun> runs,
      List<RunPrecedence> precedence,
      List<String> byRules,
      long seed,
      boolean eitherWay) {
    this.weldment = weldment;
    this.seed = seed;
    this.model = new PullModel(weldment, runs);
    this.sequence = model.sequence();
    this.cost = new ShapeCost(model, sequence);
    this.orders = new Orders(weldment, runs, precedence, model.pieces(), eitherWay);
    this.spread = new Spread(seed, weldment, model);
    this.rules = orders.named(byRules);
  }

  /**
   * The job.
   *
   * @param weldment what is built
   * @param contacts how its parts meet
   * @param joints plans of its joints; may be empty where the file fixes its runs
   * @param seed of searches
   * @return empty where nothing pulls: no run is planned and none is given
   */
  public static Optional<PullJob> of(
      Weldment weldment, List<Contact> contacts, List<JointPlan> joints, long seed) {
    List<PulledRun> runs = PulledRuns.of(weldment, contacts, joints);
    if (runs.isEmpty()) {
      return Optional.empty();
    }
    List<String> byRules = new ArrayList<>();
    if (!joints.isEmpty()) {
      OrderResult result = OrderPlanner.plan(weldment.withoutOrder(), joints, contacts, seed);
      if (result instanceof WorkOrder work) {
        work.runs().stream().map(RunPlan::name).forEach(byRules::add);
      }
    }
    return Optional.of(
        new PullJob(weldment, runs, precedence(weldment, joints, contacts), byRules, seed, true));
  }

  /**
   * The job for a plan: the order by the rules is known, and runs keep the direction that the rules
   * give them.
   *
   * @param byRules names of the runs in the order by the rules
   */
  public static Optional<PullJob> planned(
      Weldment weldment,
      List<Contact> contacts,
      List<JointPlan> joints,
      List<String> byRules,
      long seed) {
    List<PulledRun> runs = PulledRuns.of(weldment, contacts, joints);
    return runs.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PullJob(
                weldment, runs, precedence(weldment, joints, contacts), byRules, seed, false));
  }

  private static List<RunPrecedence> precedence(
      Weldment weldment, List<JointPlan> joints, List<Contact> contacts) {
    return joints.isEmpty()
        ? List.of()
        : RunPrecedence.of(weldment.withoutOrder(), joints, contacts);
  }

  /** True when the file writes an order. */
  public boolean anyWritten() {
    return orders.written().isPresent();
  }

  /** How many runs there are. */
  public int runs() {
    return model.runs().size();
  }

  /**
   * Works out what an order does.
   *
   * @param which the order that is told in full; the others are compared with it
   * @param effort how many orders a search looks at, at most
   * @param stop true ends the search with the best so far
   */
  public PullAnswer answer(NamedOrder which, long effort, BooleanSupplier stop) {
    Map<NamedOrder, List<Step>> all = new EnumMap<>(NamedOrder.class);
    all.put(NamedOrder.RULES, rules);
    orders.written().ifPresent(written -> all.put(NamedOrder.WRITTEN, written));
    all.put(NamedOrder.ONE_SIDE_FIRST, orders.oneSideFirst());
    all.put(NamedOrder.LEFT_TO_RIGHT, orders.leftToRight());
    Optional<Search> search = Optional.empty();
    if (which == NamedOrder.BEST) {
      FoundOrder found = search(List.copyOf(all.values()), effort, stop);
      all.put(NamedOrder.BEST, found.order());
      search =
          Optional.of(new Search(found.proved(), found.evaluations(), seed, found.interrupted()));
    }
    List<Compared> compared = new ArrayList<>();
    all.forEach((name, order) -> compared.add(compared(name, order)));
    return told(which, all.get(which), search, compared);
  }

  private FoundOrder search(List<List<Step>> starts, long effort, BooleanSupplier stop) {
    OrderProblem problem = orders.problem();
    double count = 1;
    for (int run = 0; run < problem.runs() && count <= MOST_LOOKED_AT; run++) {
      count *= (run + 1) * (problem.eitherWay(run) ? 2 : 1);
    }
    return count <= MOST_LOOKED_AT
        ? new ExhaustiveSearch<>(problem, cost, stop).search()
        : OrderSearch.best(problem, cost, starts, seed, effort, stop);
  }

  private Compared compared(NamedOrder name, List<Step> order) {
    Welded welded = Welded.of(model, order, false);
    List<Spread.Band> bands = spread.bands(model.measures(), welded.released());
    double worst = 0;
    for (int m = 0; m < bands.size(); m++) {
      double tolerance = model.measures().get(m).toleranceMm();
      worst = Math.max(worst, Math.abs(bands.get(m).expected()) / tolerance);
    }
    double minutes = 0;
    for (int i = 1; i < order.size(); i++) {
      minutes +=
          ShapeCost.minutes(
              model.runs().get(order.get(i - 1).run()), model.runs().get(order.get(i).run()));
    }
    return new Compared(name, bands.stream().map(Spread.Band::expected).toList(), worst, minutes);
  }

  private PullAnswer told(
      NamedOrder which, List<Step> order, Optional<Search> search, List<Compared> compared) {
    Welded welded = Welded.of(model, order, true);
    List<Turn> sequenceOfRuns =
        order.stream()
            .map(step -> new Turn(model.runs().get(step.run()).name(), step.reversed()))
            .toList();
    return new PullAnswer(
        weldment,
        which,
        sequenceOfRuns,
        search,
        checks(welded, order),
        compared,
        model.bodies().entrySet().stream()
            .map(entry -> new Taken(entry.getKey(), entry.getValue().reason()))
            .toList(),
        order.stream().map(step -> wanted(step.run())).toList(),
        Buckling.of(weldment, model.runs(), model.amounts()),
        moved(welded.shapeHeld()),
        moved(welded.shape()),
        notes());
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>(model.notes());
    notes.add(
        "Peak temperatures are not simulated: shrinkage is by the published closed forms, with"
            + " limits for narrow walls.");
    notes.add("Self-weight, contact between parts, warping and the pull of tacks are left out.");
    return notes;
  }

  private Wanted wanted(int r) {
    PulledRun run = model.runs().get(r);
    Amounts amounts = model.amounts().get(r);
    boolean joined = run.kind() == PulledRun.Kind.BUTT || run.kind() == PulledRun.Kind.CORNER;
    double across = 0;
    double angle = 0;
    double along = 0;
    for (Amounts.OfWall wall : amounts.walls()) {
      across = joined ? across + wall.acrossMm() : Math.max(across, wall.acrossMm());
      angle = joined ? angle + wall.angleRad() : Math.max(angle, wall.angleRad());
      along += wall.alongN();
    }
    return new Wanted(
        run.name(),
        run.netJPerMm(),
        amounts.closingMm(),
        across,
        angle,
        along,
        amounts.basis().words(),
        amounts.beyond());
  }

  private List<CheckAnswer> checks(Welded welded, List<Step> order) {
    Remedies remedies = new Remedies(weldment, model, seed, order);
    List<Spread.Band> held = spread.bands(model.measures(), welded.held());
    List<Spread.Band> released = spread.bands(model.measures(), welded.released());
    List<Spread.Band> preset = spread.bandsWithPresets(model.measures(), welded.released());
    List<CheckAnswer> answers = new ArrayList<>();
    int first = 0;
    for (int m = 0; m < model.measures().size(); m++) {
      Measure measure = model.measures().get(m);
      Verdict verdict = verdict(measure, released.get(m));
      List<Share> shares = shares(measure, welded.released(), first);
      boolean helped = verdict == Verdict.MARGINAL || verdict == Verdict.NO;
      answers.add(
          new CheckAnswer(
              measure.check(),
              measure.toleranceMm(),
              band(held.get(m)),
              band(released.get(m)),
              verdict,
              measure.untold(),
              shares,
              presets(measure, Welded.readings(welded.released()), first),
              band(preset.get(m)),
              helped ? remedies.of(m, released.get(m).expected(), shares) : List.of()));
      first += measure.readings();
    }
    return answers;
  }

  private static Band band(Spread.Band band) {
    return new Band(band.expected(), band.low(), band.high());
  }

  private static Verdict verdict(Measure measure, Spread.Band band) {
    if (!measure.untold().isEmpty()) {
      return Verdict.UNTOLD;
    }
    double most = Math.max(Math.abs(band.low()), Math.abs(band.high()));
    if (most <= measure.toleranceMm()) {
      return Verdict.YES;
    }
    return Math.abs(band.expected()) <= measure.toleranceMm() ? Verdict.MARGINAL : Verdict.NO;
  }

  private List<Share> shares(Measure measure, double[][][] all, int first) {
    double[] weights = measure.weights(Welded.readings(all), first);
    List<Share> shares = new ArrayList<>();
    for (int run = 0; run < model.runs().size(); run++) {
      double sum = 0;
      for (int k = 0; k < weights.length; k++) {
        for (double share : all[first + k][run]) {
          sum += weights[k] * share;
        }
      }
      shares.add(new Share(model.runs().get(run).name(), sum));
    }
    shares.sort(Comparator.comparingDouble((Share share) -> -Math.abs(share.mm())));
    return shares;
  }

  private static List<Preset> presets(Measure measure, double[] readings, int first) {
    List<Preset> presets = new ArrayList<>();
    int at = first;
    for (Measure.Point point : measure.points()) {
      Vector3D offset = Vector3D.ZERO;
      for (Vector3D way : point.ways()) {
        offset = offset.add(-readings[at++], way);
      }
      presets.add(new Preset(point.part(), point.where(), offset));
    }
    return presets;
  }

  /** Each group of parts by itself: between two groups nothing holds. */
  private List<MovedPart> moved(List<double[]> shape) {
    Map<String, List<Station>> byPart = new LinkedHashMap<>();
    int at = 0;
    for (Map.Entry<String, Body> entry : model.bodies().entrySet()) {
      List<Station> stations = new ArrayList<>();
      for (Vector3D place : entry.getValue().stations()) {
        double[] six = shape.get(at++);
        stations.add(
            new Station(
                place, new Vector3D(six[0], six[1], six[2]), new Vector3D(six[3], six[4], six[5])));
      }
      byPart.put(entry.getKey(), stations);
    }
    Map<String, MovedPart> moved = new LinkedHashMap<>();
    model
        .groups()
        .all()
        .values()
        .forEach(
            parts -> {
              List<Station> all = new ArrayList<>();
              parts.forEach(part -> all.addAll(byPart.get(part)));
              List<Station> still = Still.of(all);
              int from = 0;
              for (String part : parts) {
                int count = byPart.get(part).size();
                moved.put(part, new MovedPart(part, still.subList(from, from + count)));
                from += count;
              }
            });
    return model.bodies().keySet().stream().map(moved::get).toList();
  }
}
