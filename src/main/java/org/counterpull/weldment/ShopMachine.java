package org.counterpull.weldment;

import org.counterpull.machine.Machine;

/**
 * A machine that the job can be welded with, and where it stands.
 *
 * @param machine the power source, with what is at hand for it
 * @param place where the work has to be brought; {@code "here"} for the bench
 */
public record ShopMachine(Machine machine, String place) {
  public static final String HERE = "here";
}
