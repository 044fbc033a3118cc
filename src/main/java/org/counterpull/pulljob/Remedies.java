package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.Remedy;
import org.counterpull.plan.PullAnswer.Share;

/**
 * What would bring a check nearer, each with what it is worth: what runs do is linear in what they
 * want, so less of a run is known without welding it anew.
 */
final class Remedies {
  /** Heat of a fillet one size smaller over its own: (4 / 5)2. */
  private static final double SMALLER = 0.64;

  private static final double STITCHED = 0.5;
  private static final int MOST_STITCHED = 4;

  private final PullModel model;
  private final Spread spread;

  Remedies(PullModel model, Spread spread) {
    this.model = model;
    this.spread = spread;
  }

  /** Those that do help, the most first. */
  List<Remedy> of(int check, double[][][] shares, List<Share> byRun) {
    double sign = Math.signum(byRun.stream().mapToDouble(Share::mm).sum());
    List<String> pulling =
        byRun.stream().filter(share -> share.mm() * sign > 0).map(Share::run).toList();
    List<Remedy> all = new ArrayList<>();
    all.add(
        remedy(
            "every weld a size smaller (leg 5 to 4 mm, 64 % of the heat)",
            check, shares, model.runs().stream().map(PulledRun::name).toList(), SMALLER));
    if (!pulling.isEmpty()) {
      List<String> most = pulling.subList(0, Math.min(MOST_STITCHED, pulling.size()));
      all.add(
          remedy(
              "stitches over half the length at " + String.join(", ", most),
              check,
              shares,
              most,
              STITCHED));
      joint(pulling.get(0))
          .ifPresent(
              joint ->
                  all.add(
                      remedy(
                          "joint " + joint + " bolted or set in cold instead of welded",
                          check,
                          shares,
                          runsOf(joint),
                          0)));
    }
    double now = Math.abs(spread.bands(model.measures(), shares).get(check).expected());
    return all.stream()
        .filter(remedy -> Math.abs(remedy.leaves().expected()) < now)
        .sorted(Comparator.comparingDouble(remedy -> Math.abs(remedy.leaves().expected())))
        .collect(Collectors.toList());
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
      String what, int check, double[][][] shares, List<String> runs, double factor) {
    TreeSet<String> changed = new TreeSet<>(runs);
    double[][][] less = new double[shares.length][][];
    for (int reading = 0; reading < shares.length; reading++) {
      less[reading] = new double[shares[reading].length][];
      for (int run = 0; run < shares[reading].length; run++) {
        double times = changed.contains(model.runs().get(run).name()) ? factor : 1;
        less[reading][run] = shares[reading][run].clone();
        for (int effect = 0; effect < less[reading][run].length; effect++) {
          less[reading][run][effect] *= times;
        }
      }
    }
    Spread.Band band = spread.bands(model.measures(), less).get(check);
    return new Remedy(what, new Band(band.expected(), band.low(), band.high()));
  }
}
