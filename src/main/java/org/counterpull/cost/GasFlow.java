package org.counterpull.cost;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.jointplan.RunPlan;

/**
 * Flow of shielding gas of a run: the one that its filler states, else by rule.
 *
 * <p><b>Source:</b> 12 l/min for each mm of wire; TIG 8 l/min: common practice, no source.
 */
final class GasFlow {
  private static final Pattern STATED = Pattern.compile("([0-9]+(?:\\.[0-9]+)?) l/min");
  private static final double FOR_EACH_MM = 12;
  private static final double TIG = 8;

  private GasFlow() {}

  /** Flow, l/min; 0 where no gas comes from a bottle. */
  static double lPerMin(RunPlan run) {
    boolean needsNone =
        switch (run.process()) {
          case MMA, FCAW_S -> true;
          case MAG, MIG, FCAW, TIG -> false;
        };
    if (needsNone) {
      return 0;
    }
    Matcher stated = STATED.matcher(run.filler().gas());
    if (stated.find()) {
      return Double.parseDouble(stated.group(1));
    }
    return run.process() == WeldingProcess.TIG ? TIG : FOR_EACH_MM * run.filler().diameterMm();
  }

  /** Gas before and after each arc, s: common practice, no source. */
  static double beforeAndAfterS(RunPlan run) {
    return run.process() == WeldingProcess.TIG ? 8 : 1.5;
  }
}
