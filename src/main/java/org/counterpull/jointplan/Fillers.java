package org.counterpull.jointplan;

import java.util.Locale;
import org.counterpull.machine.WorkingPoint;
import org.counterpull.procedure.BaseMaterial;
import org.counterpull.procedure.Procedure;
import org.counterpull.quantity.Printed;
import org.counterpull.weldment.ShopMachine;

/** Filler, gas and polarity that match steel and process. Common practice, no source. */
final class Fillers {
  private Fillers() {}

  /** Filler of a procedure row, in the diameter that the machine holds. */
  static Filler of(Procedure row, WorkingPoint point) {
    return new Filler(
        row.electrode().classification(),
        point.diameterMm(),
        row.shielding()
            .map(s -> s.name() + ", " + Printed.number(s.flowLPerMin().middle(), 2) + " l/min")
            .orElse("none"),
        row.electrode().polarity().word(),
        storage(point));
  }

  /** Filler without a row: the usual one for the process. */
  static Filler usual(ShopMachine machine, WorkingPoint point, BaseMaterial material, String gas) {
    return new Filler(
        switch (material) {
          case STAINLESS_STEEL -> "308L";
          case ALUMINIUM -> "5356";
          case CARBON_STEEL ->
              switch (point.process()) {
                case MMA -> machine.electrodes().stream().findFirst().orElse("E7018");
                case FCAW -> "E71T-1";
                case FCAW_S -> "E71T-11";
                case MAG, MIG, TIG -> "ER70S-6";
              };
        },
        point.diameterMm(),
        gas,
        switch (point.process()) {
          case FCAW_S, TIG -> "DC-";
          case MMA, MAG, MIG, FCAW -> "DC+";
        },
        storage(point));
  }

  private static String storage(WorkingPoint point) {
    return switch (point.process()) {
      case MMA ->
          String.format(
              Locale.ROOT, "basic electrodes dried to their packet and kept warm until used");
      case FCAW, FCAW_S -> "spool dry and covered; bare rusted or damp wire is not used";
      case MAG, MIG -> "spool dry and covered, free of rust";
      case TIG -> "rods clean and free of oil";
    };
  }
}
