package org.counterpull.cooling;

import org.counterpull.cooling.SurfaceHeatTransfer.Surroundings;
import org.counterpull.material.Metal;
import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * Time for a body that is evenly warm to cool in still air.
 *
 * <p><b>Formula:</b> m c(T) dT/dt = -A h(T)(T - Ta), integrated over temperature; or, with constant
 * values, t = (m c/(h A)) ln((T1 - Ta)/(T2 - Ta)). <b>Source:</b> Incropera, Fundamentals of Heat
 * and Mass Transfer (from memory); properties by {@link Metal}. <b>Valid for:</b> Biot number h
 * (V/A) / lambda below 0.1, and only once heat has spread through the body: sqrt(4 a t) over its
 * greatest distance. The time is good to 25 %, as the film coefficient is.
 */
public final class LumpedCooling {
  public static final Formula FORMULA =
      new Formula(
          "wait-lumped",
          "time for a small body to cool in still air",
          "s",
          "from memory: Incropera, Fundamentals of Heat and Mass Transfer; EN 1993-1-2");

  private static final double LARGEST_BIOT = 0.1;
  private static final double M_PER_MM = 1e-3;
  private static final int INTERVALS = 2000;

  /**
   * A body.
   *
   * @param metal its properties
   * @param volumeMm3 volume
   * @param surfaceMm2 surface that gives off heat
   */
  public record Body(Metal metal, double volumeMm3, double surfaceMm2) {

    public Body {
      Require.positive("volume", volumeMm3, "mm3");
      Require.positive("surface", surfaceMm2, "mm2");
    }

    /** Mean rise in K after net heat in J, at the specific heat of a temperature. */
    public double meanRiseK(double netHeatJ, double atC) {
      return netHeatJ / (volumeMm3 * metal.heatCapacityJPerMm3K(atC));
    }

    private double surfacePerVolumePerM() {
      return surfaceMm2 / volumeMm3 / M_PER_MM;
    }
  }

  private LumpedCooling() {}

  /** Time to cool from one temperature to another, both above ambient. */
  public static Computed of(Body body, Surroundings air, double fromC, double toC) {
    double filmWPerM2K = air.filmWPerM2K(fromC);
    double biot =
        filmWPerM2K / body.surfacePerVolumePerM() / body.metal().conductivityWPerMK(fromC);
    return FORMULA.result(
        seconds(body, air, fromC, toC),
        new Limits().within("Biot number", biot, 0, LARGEST_BIOT, "1").outside());
  }

  /** The same without the trace; zero when it is already cool enough. */
  public static double seconds(Body body, Surroundings air, double fromC, double toC) {
    Require.positive("target over ambient", toC - air.ambientC(), "K");
    if (Require.finite("start", fromC, "C") <= toC) {
      return 0;
    }
    double step = (fromC - toC) / INTERVALS;
    double sum = 0;
    for (int i = 0; i < INTERVALS; i++) {
      sum += secondsPerK(body, air, toC + (i + 0.5) * step);
    }
    return sum * step;
  }

  private static double secondsPerK(Body body, Surroundings air, double atC) {
    double heatPerM3K = body.metal().densityKgPerM3() * body.metal().specificHeatJPerKgK(atC);
    double lossWPerM2 = air.filmWPerM2K(atC) * (atC - air.ambientC());
    return heatPerM3K / (body.surfacePerVolumePerM() * lossWPerM2);
  }

  /**
   * Constant values: t = (m c/(h A)) ln((T1 - Ta)/(T2 - Ta)).
   *
   * @param heatCapacityJPerK m c of the body
   * @param lossWPerK h A of the body
   */
  public static double constantFilmS(
      double heatCapacityJPerK, double lossWPerK, double fromC, double toC, double ambientC) {
    Require.positive("heat capacity", heatCapacityJPerK, "J/K");
    Require.positive("loss", lossWPerK, "W/K");
    Require.positive("target over ambient", toC - ambientC, "K");
    Require.positive("start over target", fromC - toC, "K");
    return heatCapacityJPerK / lossWPerK * Math.log((fromC - ambientC) / (toC - ambientC));
  }

  /** Steady mean rise in K of a body that gets a net power for a share of the time. */
  public static double steadyRiseK(double netPowerW, double duty, double lossWPerK) {
    return netPowerW * duty / Require.positive("loss", lossWPerK, "W/K");
  }

  /** Share of the time for which a net power keeps the steady mean rise, at most 1. */
  public static double allowedDuty(double netPowerW, double riseK, double lossWPerK) {
    return Math.min(1, riseK * lossWPerK / Require.positive("net power", netPowerW, "W"));
  }
}
