package org.counterpull.weldment;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;
import org.counterpull.stock.Stock;

/**
 * One piece of stock, placed in space.
 *
 * @param name unique in the weldment
 * @param stock the section; its dimensions in mm
 * @param lengthMm along x of the frame, the longest length where an end is mitred; for a plate with
 *     an outline the outline's extent along x
 * @param frame part axes in weldment axes; the origin is the middle of the box around the section
 *     at the left end
 * @param left cut of the left end
 * @param right cut of the right end
 * @param outline corners of an outlined plate in part axes x, y (y measured from the frame's
 *     origin), in order, mm; empty for everything else
 * @param steel what it is made of
 * @param shaped true when the end that meets another part is coped or ground to fit its surface
 * @param massKg given mass, where the part isn't what its stock says; otherwise empty
 */
public record Part(
    String name,
    Stock stock,
    double lengthMm,
    Frame frame,
    EndCut left,
    EndCut right,
    List<Vector2D> outline,
    PartMaterial steel,
    boolean shaped,
    Optional<Double> massKg) {

  public Part {
    if (!(lengthMm > 0)) {
      throw new IllegalArgumentException(
          "length " + lengthMm + " mm of " + name + " is not above 0");
    }
    outline = List.copyOf(outline);
  }
}
