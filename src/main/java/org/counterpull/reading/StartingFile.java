package org.counterpull.reading;

import org.counterpull.quantity.LengthUnit;

/** A commented weldment file to start from: a gate post with a hinge pad and a gusset. */
public final class StartingFile {

  private StartingFile() {}

  /**
   * The text of the file.
   *
   * @param unit the unit of its lengths: inches for inches and feet, otherwise mm
   */
  public static String text(LengthUnit unit) {
    return switch (unit) {
      case MM, CM, M -> Resource.text("/starting/mm.yaml");
      case IN, FT -> Resource.text("/starting/in.yaml");
    };
  }
}
