package org.counterpull.stock;

import java.util.OptionalDouble;
import org.counterpull.section.SectionArea;

/**
 * Plate, lying flat: its thickness is z. The width (y) comes from the part, whose outline may be
 * something other than a rectangle, so the stock itself may not know it.
 *
 * @param widthMm y, if given
 * @param thicknessMm z
 */
public record Plate(OptionalDouble widthMm, double thicknessMm) implements Stock {
  static final String EXAMPLE = "plate 8";

  public Plate {
    Dimensions.plausible("plate", EXAMPLE, thicknessMm);
    widthMm.ifPresent(mm -> Dimensions.plausible("plate", EXAMPLE, mm));
  }

  /** Plate of a thickness, its width not yet known. */
  public Plate(double thicknessMm) {
    this(OptionalDouble.empty(), thicknessMm);
  }

  /** The same plate cut to a width. */
  public Plate withWidth(double newWidthMm) {
    return new Plate(OptionalDouble.of(newWidthMm), thicknessMm);
  }

  @Override
  public double areaMm2() {
    return SectionArea.rectangleMm2(acrossMm(), thicknessMm);
  }

  @Override
  public double acrossMm() {
    return widthMm.orElseThrow(
        () -> new IllegalStateException(describe() + " has no width: cut it to one first"));
  }

  @Override
  public double upMm() {
    return thicknessMm;
  }

  @Override
  public double thinnestMm() {
    return thicknessMm;
  }

  @Override
  public double thickestMm() {
    return thicknessMm;
  }

  @Override
  public String describe() {
    return "plate "
        + (widthMm.isPresent()
            ? Dimensions.times(widthMm.getAsDouble(), thicknessMm)
            : Dimensions.print(thicknessMm));
  }
}
