package org.counterpull.order;

import java.util.List;
import java.util.Locale;
import org.counterpull.jointplan.RunPlan;

/** What a wait is for and what ends it, in words. */
final class WaitWords {
  /** Rule of waits until the metal has cooled. */
  static final String INTERPASS = "interpass wait";

  /** Rule of waits that keep a feature below its limit. */
  static final String FEATURE = "wait for a feature";

  /** Rule of waits until the machine has rested. */
  static final String DUTY = "duty wait";

  /** Rule of pauses that the file writes down. */
  static final String WRITTEN = "written pause";

  private WaitWords() {}

  /** The closed forms give no useful figure right after the arc: above this it says so. */
  private static final double STILL_HOT_C = 500;

  static String interpass(RunPlan run, double metalC) {
    String now =
        metalC > STILL_HOT_C
            ? "is still above 500 C"
            : String.format(Locale.ROOT, "is at about %.0f C", metalC);
    return String.format(
        Locale.ROOT,
        "Interpass wait: the metal %s. Strike when it is below %.0f C right beside the seam, by"
            + " temperature stick or thermometer.",
        now,
        run.interpassMaxC());
  }

  static String feature(String spared) {
    return "Feature wait: begun now, this run would heat " + spared + ". It ends by the clock.";
  }

  static String duty(RunPlan run, double dutyPercent) {
    return String.format(
        Locale.ROOT,
        "Duty wait: %s may burn %.0f %% of any 10 min at this current. It ends by the clock.",
        run.machine(),
        dutyPercent);
  }

  static String written() {
    return "The file writes this pause down. It ends by the clock.";
  }

  static String cooling(double tempC) {
    return String.format(
        Locale.ROOT,
        "Cooling wait: it ends when the warmest seam is below %.0f C, by thermometer; a bare hand"
            + " can rest on it.",
        tempC);
  }

  /** Which of the waits lasts longest. */
  static String rule(double metalS, double dutyS, double writtenS, boolean feature) {
    if (writtenS >= Math.max(metalS, dutyS)) {
      return WRITTEN;
    }
    String metal = feature ? FEATURE : INTERPASS;
    return metalS >= dutyS ? metal : DUTY;
  }

  /** The reasons of a wait, the one that lasts longest first. */
  static List<String> longestFirst(
      double interpassS, String interpass, double dutyS, String duty, double writtenS) {
    record Cause(double seconds, String words) {}
    return List.of(
            new Cause(interpassS, interpass),
            new Cause(dutyS, duty),
            new Cause(writtenS, written()))
        .stream()
        .filter(cause -> cause.seconds() > 0)
        .sorted((a, b) -> Double.compare(b.seconds(), a.seconds()))
        .map(Cause::words)
        .toList();
  }

  /** A time as people say it. */
  static String time(double seconds) {
    long whole = Math.round(seconds);
    if (whole < 120) {
      return whole + " s";
    }
    long left = whole % 60;
    if (whole < 600 && left > 0) {
      return whole / 60 + " min " + left + " s";
    }
    return whole < 7200
        ? Math.round(seconds / 60) + " min"
        : String.format(Locale.ROOT, "%.1f h", seconds / 3600);
  }
}
