package org.counterpull.weldment;

import java.util.List;
import org.counterpull.machine.Machine;

/**
 * A machine that the job can be welded with, and where it stands.
 *
 * @param machine the power source
 * @param place where the work has to be brought; {@code "here"} for the bench
 * @param electrodes designations of the covered electrodes at hand, such as E7018; empty where the
 *     file names none
 */
public record ShopMachine(Machine machine, String place, List<String> electrodes) {
  public static final String HERE = "here";

  public ShopMachine {
    electrodes = List.copyOf(electrodes);
  }

  /** A machine whose electrodes are not named. */
  public ShopMachine(Machine machine, String place) {
    this(machine, place, List.of());
  }
}
