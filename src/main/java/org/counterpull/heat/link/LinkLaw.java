package org.counterpull.heat.link;

import org.counterpull.heat.face.Exchange;

/** What lies between two patches. */
public sealed interface LinkLaw {

  /**
   * Resistance between the two surfaces per area, mm2K/W.
   *
   * @param distanceMm between the surfaces
   * @param tempAC temperature of one side
   * @param tempBC temperature of the other
   * @param conductivityWPerMmK mean conductivity of the two metals
   */
  double resistanceMm2KPerW(
      double distanceMm, double tempAC, double tempBC, double conductivityWPerMmK);

  /** Whether the area that it covers is lost to the air. */
  boolean covers();

  /** Both sides are one metal: a part that is laid out as several blocks. */
  record Joined() implements LinkLaw {
    @Override
    public double resistanceMm2KPerW(double distance, double a, double b, double conductivity) {
      return 0;
    }

    @Override
    public boolean covers() {
      return true;
    }
  }

  /**
   * Faces pressed or tacked together.
   *
   * @param conductanceWPerM2K of the contact, positive
   */
  record Contact(double conductanceWPerM2K) implements LinkLaw {
    public Contact {
      if (!(conductanceWPerM2K > 0)) {
        throw new IllegalArgumentException(
            "contact conductance " + conductanceWPerM2K + " W/m2K must be positive");
      }
    }

    @Override
    public double resistanceMm2KPerW(double distance, double a, double b, double conductivity) {
      return 1e6 / conductanceWPerM2K;
    }

    @Override
    public boolean covers() {
      return true;
    }
  }

  /**
   * A narrow gap: conduction through the air in it and radiation over it, no draught.
   *
   * <p>Conductivity of air {@code 0.0243 (T/273.15)^0.8} W/mK with T in kelvin: from memory, fits
   * handbook values within 3 % from 0 to 800 C.
   *
   * @param emissivityA of one side
   * @param emissivityB of the other
   */
  record AirGap(double emissivityA, double emissivityB) implements LinkLaw {
    private static final double KELVIN = 273.15;
    private static final double LEAST_MM = 0.05;

    public AirGap {
      if (!(emissivityA > 0 && emissivityA <= 1 && emissivityB > 0 && emissivityB <= 1)) {
        throw new IllegalArgumentException(
            "emissivities " + emissivityA + " and " + emissivityB + " must be above 0, up to 1");
      }
    }

    @Override
    public double resistanceMm2KPerW(double distance, double a, double b, double conductivity) {
      double kelvinA = a + KELVIN;
      double kelvinB = b + KELVIN;
      double air = 0.0243 * Math.pow(0.5 * (kelvinA + kelvinB) / KELVIN, 0.8);
      double conducted = air / Math.max(distance, LEAST_MM) * 1e3;
      double both = 1 / (1 / emissivityA + 1 / emissivityB - 1);
      double radiated =
          both * Exchange.SIGMA * (kelvinA * kelvinA + kelvinB * kelvinB) * (kelvinA + kelvinB);
      return 1e6 / (conducted + radiated);
    }

    @Override
    public boolean covers() {
      return true;
    }
  }

  /** Weld metal of the parents' conductivity; its length is the distance of the pair. */
  record WeldMetal() implements LinkLaw {
    @Override
    public double resistanceMm2KPerW(double distance, double a, double b, double conductivity) {
      return distance / conductivity;
    }

    @Override
    public boolean covers() {
      return false;
    }
  }
}
