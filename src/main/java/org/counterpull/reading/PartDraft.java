package org.counterpull.reading;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.counterpull.space.Frame;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.EndCut;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.PartMaterial;

/**
 * A part before all the others are known: what it is, and how it is placed.
 *
 * @param position empty where the file leaves it open
 * @param loose true when it is meant to be in no joint
 */
record PartDraft(
    String name,
    Body body,
    EndCut left,
    EndCut right,
    PartMaterial steel,
    boolean shaped,
    boolean loose,
    Optional<Double> massKg,
    Optional<Position> position) {

  /**
   * Stock cut to length.
   *
   * @param outline corners from the middle of the left end; empty for a plain piece
   */
  record Body(Stock stock, double lengthMm, List<Vector2D> outline) {
    Body {
      outline = List.copyOf(outline);
    }

    Box box() {
      return new Box(lengthMm, stock.acrossMm(), stock.upMm());
    }
  }

  Part placed(Frame frame) {
    return new Part(
        name,
        body.stock(),
        body.lengthMm(),
        frame,
        left,
        right,
        body.outline(),
        steel,
        shaped,
        massKg);
  }
}
