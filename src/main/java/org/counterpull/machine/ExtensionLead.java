package org.counterpull.machine;

import org.counterpull.power.LeadDrop;
import org.counterpull.power.Supply;
import org.counterpull.quantity.Require;

/**
 * An extension lead between socket and machine.
 *
 * <p>It takes voltage from the machine, which then draws more current for the same arc. Above a
 * tenth of the socket's voltage machines shut themselves off. <b>Source:</b> Ohm's law; the tenth
 * and the current density are common practice, no source.
 *
 * @param lengthM from plug to socket, one way
 * @param sectionMm2 copper of one conductor
 */
public record ExtensionLead(double lengthM, double sectionMm2) {
  /** Most voltage that may be lost, share of the socket's. */
  public static final double MOST_DROP = 0.10;

  /** Above this effective current density an unrolled lead gets hot, A/mm2. */
  public static final double HOT_A_PER_MM2 = 10;

  public ExtensionLead {
    Require.within("lead length", lengthM, 0.1, 500, "m");
    Require.within("lead section", sectionMm2, 0.5, 120, "mm2");
  }

  /** Voltage lost at a supply current, V: there and back, or root 3 one way on three phases. */
  public double dropV(Supply supply, double supplyA) {
    double conductorM = (supply.phases() == 3 ? Math.sqrt(3) : 2) * lengthM;
    return LeadDrop.of(supplyA, conductorM, sectionMm2).value();
  }

  /** Supply current at which the most that may be lost is lost, A. */
  public double largestSupplyA(Supply supply) {
    return MOST_DROP * supply.voltageV() / dropV(supply, 1);
  }

  /** What is left at the machine while it draws a current. */
  Supply behind(Supply supply, double supplyA) {
    double leftV = supply.voltageV() - dropV(supply, supplyA);
    double least = (1 - MOST_DROP) * supply.voltageV();
    return new Supply(Math.max(least, leftV), supply.breakerA(), supply.phases());
  }

  /** Section at which a lead of this length loses no more than 5 % at a current, mm2. */
  public double goodSectionMm2(Supply supply, double supplyA) {
    return sectionMm2 * dropV(supply, supplyA) / (0.05 * supply.voltageV());
  }
}
