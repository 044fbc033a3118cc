package org.counterpull.machine;

import java.util.Optional;
import org.counterpull.arc.WeldingProcess;
import org.counterpull.filler.FillerClass;
import org.counterpull.filler.FillerClasses;
import org.counterpull.quantity.Require;

/**
 * A wire, covered electrode or rod that lies at the machine.
 *
 * @param form what it is
 * @param diameterMm its diameter
 * @param designation as on spool or packet; empty where the shop doesn't say
 */
public record FillerAtHand(Form form, double diameterMm, String designation) {
  /** How filler comes. */
  public enum Form {
    WIRE,
    ELECTRODE,
    ROD;

    /** The form that a process melts. */
    public static Form of(WeldingProcess process) {
      return switch (process) {
        case MMA -> ELECTRODE;
        case TIG -> ROD;
        case MAG, MIG, FCAW, FCAW_S -> WIRE;
      };
    }
  }

  public FillerAtHand {
    Require.positive("filler diameter", diameterMm, "mm");
  }

  /** Its class; empty where it is not said or not known here. */
  public Optional<FillerClass> fillerClass() {
    return designation.isEmpty() ? Optional.empty() : FillerClasses.find(designation);
  }

  /**
   * Whether a process can melt it: the form fits, and the class, where known, is of the process.
   */
  public boolean serves(WeldingProcess process) {
    return form == Form.of(process)
        && fillerClass().map(c -> c.processes().contains(process)).orElse(true);
  }
}
