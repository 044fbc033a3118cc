package org.counterpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.plan.PullAnswer.Band;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.Preset;
import org.counterpull.plan.PullAnswer.Remedy;
import org.counterpull.plan.PullAnswer.Share;
import org.counterpull.plan.PullAnswer.Slender;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.weldment.Check;

/** Says in words what the shape engine found out about checks. */
final class ShapeWords {
  private static final double WORTH_TELLING_MM = 0.01;

  /** What feeler gauges and shims still set at a bench (common practice, no source). */
  private static final double WORTH_SETTING_MM = 0.1;

  /** Setting off that leaves more than this share is not worth the trouble. */
  private static final double WORTH_LEAVING = 0.9;

  private static final int MOST_SHARES = 4;
  private static final String[][] WAYS = {{"right", "left"}, {"back", "front"}, {"up", "down"}};

  private final Measures measures;

  ShapeWords(Measures measures) {
    this.measures = measures;
  }

  String fine(double mm) {
    return measures.fine(mm).first();
  }

  private static boolean signed(Check check) {
    return check.kind() == Check.Kind.DISTANCE;
  }

  /** 0.3 mm, or 1.2 mm short. */
  String off(Check check, double mm) {
    if (!signed(check)) {
      return fine(mm);
    }
    return fine(Math.abs(mm)) + (mm < 0 ? " short" : " long");
  }

  /** A check's expected value, fixtures off. */
  String expected(CheckAnswer answer) {
    return off(answer.check(), answer.released().expected());
  }

  /** Its band: nine of ten come out within it. */
  String between(CheckAnswer answer) {
    Check check = answer.check();
    return off(check, answer.released().low()) + " to " + off(check, answer.released().high());
  }

  /** Expected value with its band. */
  String band(Check check, Band band) {
    if (!signed(check)) {
      return fine(band.expected()) + " (" + fine(band.low()) + " to " + fine(band.high()) + ")";
    }
    return off(check, band.expected())
        + " ("
        + off(check, band.low())
        + " to "
        + off(check, band.high())
        + ")";
  }

  /** Name, expected value, band, tolerance, verdict. */
  String verdict(CheckAnswer answer) {
    String name = answer.check().name();
    if (answer.verdict() == Verdict.UNTOLD) {
      return name + ": can't be told: " + answer.untold();
    }
    return String.format(
        Locale.ROOT,
        "%s: %s (%s), tolerance %s: %s",
        name,
        expected(answer),
        between(answer),
        fine(answer.toleranceMm()),
        answer.verdict().words());
  }

  /** The runs that move it most: "hinge-2/top 0.21 mm, ...". */
  String shares(CheckAnswer answer) {
    List<Share> most =
        answer.shares().stream()
            .filter(share -> Math.abs(share.mm()) >= WORTH_TELLING_MM)
            .limit(MOST_SHARES)
            .toList();
    if (most.isEmpty()) {
      return "no run moves it by as much as " + fine(WORTH_TELLING_MM);
    }
    return most.stream()
        .map(share -> share.run() + " " + sign(share.mm()) + fine(Math.abs(share.mm())))
        .collect(Collectors.joining(", "));
  }

  private static String sign(double mm) {
    return mm < 0 ? "-" : "+";
  }

  /** How parts are set off before tacking, one sentence for each part where it is worth it. */
  List<String> presets(CheckAnswer answer) {
    double left = Math.abs(answer.withPresets().expected());
    if (left > WORTH_LEAVING * Math.abs(answer.released().expected())) {
      return List.of();
    }
    List<String> sentences = new ArrayList<>();
    for (Preset preset : largest(answer)) {
      String where = preset.where().isEmpty() ? "" : ", " + preset.where();
      sentences.add(preset.part() + where + ": " + towards(preset.offset()));
    }
    return sentences;
  }

  /** Of a bent part its worst place only; of others every point that is worth it. */
  private static List<Preset> largest(CheckAnswer answer) {
    List<Preset> worth =
        answer.presets().stream()
            .filter(preset -> preset.offset().getNorm() >= WORTH_SETTING_MM)
            .toList();
    boolean bent =
        answer.check().kind() == Check.Kind.STRAIGHT || answer.check().kind() == Check.Kind.FLAT;
    if (!bent || worth.isEmpty()) {
      return worth;
    }
    Preset most = worth.get(0);
    for (Preset preset : worth) {
      most = preset.offset().getNorm() > most.offset().getNorm() ? preset : most;
    }
    return List.of(most);
  }

  /** 0.35 mm back and 0.1 mm up. */
  String towards(Vector3D offset) {
    double[] mm = offset.toArray();
    double most = Math.max(Math.abs(mm[0]), Math.max(Math.abs(mm[1]), Math.abs(mm[2])));
    List<String> pieces = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      if (Math.abs(mm[k]) >= Math.max(WORTH_TELLING_MM, most / 5)) {
        pieces.add(fine(Math.abs(mm[k])) + " " + WAYS[k][mm[k] < 0 ? 1 : 0]);
      }
    }
    return String.join(" and ", pieces);
  }

  /** Whether a thin part stays flat. */
  String slender(Slender thin) {
    return String.format(
        Locale.ROOT,
        "%s %s: its runs pull with %.0f kN along it, it buckles at %.0f kN (%.0f N/mm2)",
        thin.part(),
        thin.buckles() ? "BUCKLES, so its bending below is not to be believed" : "stays flat",
        thin.forceN() / 1e3,
        thin.limitN() / 1e3,
        thin.stressMPa());
  }

  static String worst(double ratio) {
    return String.format(Locale.ROOT, "%.2f", ratio);
  }

  /** What would bring a check in, each with what it leaves. */
  List<String> remedies(CheckAnswer answer) {
    List<String> sentences = new ArrayList<>();
    Check check = answer.check();
    for (Remedy remedy : answer.remedies()) {
      sentences.add(remedy.what() + ": leaves " + band(check, remedy.leaves()));
    }
    if (Math.abs(answer.held().expected()) < Math.abs(answer.released().expected())) {
      sentences.add(
          "fixtures that stay on: in them it is "
              + band(check, answer.held())
              + "; the rest springs back when they come off cold");
    }
    double most = Math.max(Math.abs(answer.released().low()), Math.abs(answer.released().high()));
    sentences.add("boring or machining after welding: leave " + fine(2 * most) + " of metal on");
    return sentences;
  }
}
