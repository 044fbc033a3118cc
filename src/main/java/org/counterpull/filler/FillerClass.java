package org.counterpull.filler;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.counterpull.arc.WeldingProcess;

/**
 * A class of filler metal.
 *
 * @param name its class by the American standard
 * @param understood designations that mean it, blanks left out
 * @param processes that melt it
 * @param suits what it joins
 * @param tensileMPa least tensile strength of its weld metal
 * @param hydrogenMlPer100g diffusible hydrogen to reckon with when it is kept as told
 * @param polarity current and pole; {@code "by process"} where the process says it
 * @param singlePass made for one pass only
 * @param flatOnly runs in PA and PB only
 * @param gas what it is made for
 * @param storage how it is kept and dried
 * @param source where the figures come from
 */
public record FillerClass(
    String name,
    Pattern understood,
    List<WeldingProcess> processes,
    List<Joined> suits,
    double tensileMPa,
    double hydrogenMlPer100g,
    String polarity,
    boolean singlePass,
    boolean flatOnly,
    GasNeed gas,
    String storage,
    String source) {
  /** Most hydrogen of a filler that still counts as low-hydrogen (H10), ml/100 g. */
  private static final double LOW_HYDROGEN_ML = 10;

  /** What shielding a class is made for. */
  public enum GasNeed {
    NONE,
    MIXED,
    EITHER,
    LOW,
    INERT
  }

  public FillerClass {
    processes = List.copyOf(processes);
    suits = List.copyOf(suits);
  }

  /** Whether a designation on packet or spool means this class. */
  boolean means(String designation) {
    String plain =
        designation
            .toUpperCase(Locale.ROOT)
            .replaceAll("^(?:(?:AWS|EN|ISO)\\s*)+[A]?[\\d.-]*[A-Z]?[:\\s]\\s*", "")
            .replaceAll("\\s+", "");
    return understood.matcher(plain).matches();
  }

  /** The pole, with what the process says where the class leaves it open. */
  public String polarity(WeldingProcess process, Joined joined) {
    if (process == WeldingProcess.TIG) {
      return joined == Joined.ALUMINIUM ? "AC" : "DC-";
    }
    return polarity.equals("by process") ? "DC+" : polarity;
  }

  /** Little enough hydrogen for thick or hardening steel. */
  public boolean isLowHydrogen() {
    return hydrogenMlPer100g <= LOW_HYDROGEN_ML;
  }
}
