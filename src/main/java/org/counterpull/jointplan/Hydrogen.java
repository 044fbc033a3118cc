package org.counterpull.jointplan;

import org.counterpull.arc.WeldingProcess;

/** Diffusible hydrogen to assume for a process with dry consumables. */
final class Hydrogen {
  private Hydrogen() {}

  /**
   * Diffusible hydrogen, ml/100 g of deposit, at the upper end of the process's usual scale of EN
   * 1011-2. Common practice, no source.
   */
  static double mlPer100g(WeldingProcess process) {
    return switch (process) {
      case MAG, MIG, MMA -> 5;
      case FCAW, FCAW_S -> 10;
      case TIG -> 3;
    };
  }
}
