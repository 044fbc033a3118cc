package org.counterpull.fit;

import org.counterpull.quantity.Computed;
import org.counterpull.quantity.Formula;
import org.counterpull.quantity.Limits;
import org.counterpull.quantity.Require;

/**
 * A tube under pressure from inside or outside, ends open.
 *
 * <p>Inside pressure p: bore grows by d p/E ((D2 + d2)/(D2 - d2) + nu), hoop stress at the bore p
 * (D2 + d2)/(D2 - d2). Outside pressure: the bore shrinks by 2 d p D2/(E (D2 - d2)).
 *
 * <p><b>Source:</b> from memory: Lame 1833; any book on strength of materials. <b>Valid for:</b>
 * elastic steel (E 206 000 MPa, nu 0.3), the loaded length long beside the wall; a warning from 350
 * MPa hoop stress on.
 */
public final class ThickTube {
  public static final Formula GROWTH =
      new Formula(
          "bore-growth",
          "growth of a bore on diameter under inside pressure",
          "mm",
          "from memory: Lame, 1833");

  public static final Formula SQUEEZE =
      new Formula(
          "bore-squeeze",
          "shrinkage of a bore on diameter under outside pressure",
          "mm",
          "from memory: Lame, 1833");

  public static final Formula HOOP =
      new Formula("bore-hoop-stress", "hoop stress at a bore", "MPa", "from memory: Lame, 1833");

  public static final double ELASTIC_MODULUS_MPA = 206_000;
  private static final double POISSON = 0.3;
  private static final double ELASTIC_UP_TO_MPA = 350;

  private ThickTube() {}

  /** Growth of the bore; both diameters in mm, pressure inside in MPa. */
  public static Computed growth(double insideMm, double outsideMm, double pressureMPa) {
    double ratio = ratio(insideMm, outsideMm);
    return GROWTH.result(
        insideMm * pressureMPa / ELASTIC_MODULUS_MPA * (ratio + POISSON),
        elastic(pressureMPa * ratio).outside());
  }

  /** Hoop stress at the bore; both diameters in mm, pressure inside in MPa. */
  public static Computed hoop(double insideMm, double outsideMm, double pressureMPa) {
    double stress = pressureMPa * ratio(insideMm, outsideMm);
    return HOOP.result(stress, elastic(stress).outside());
  }

  /** Shrinkage of the bore under outside pressure, such as a clamp's; mm and MPa. */
  public static Computed squeeze(double insideMm, double outsideMm, double pressureMPa) {
    double strain = pressureMPa / ELASTIC_MODULUS_MPA * (ratio(insideMm, outsideMm) + 1);
    return SQUEEZE.result(insideMm * strain, elastic(strain * ELASTIC_MODULUS_MPA).outside());
  }

  private static Limits elastic(double stressMPa) {
    return new Limits().within("hoop stress", stressMPa, 0, ELASTIC_UP_TO_MPA, "MPa");
  }

  private static double ratio(double insideMm, double outsideMm) {
    Require.positive("inside diameter", insideMm, "mm");
    Require.below("inside diameter", insideMm, outsideMm, "mm");
    double out = outsideMm * outsideMm;
    double in = insideMm * insideMm;
    return (out + in) / (out - in);
  }
}
