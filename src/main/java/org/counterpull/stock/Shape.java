package org.counterpull.stock;

import java.util.List;
import java.util.OptionalDouble;

/** The shapes by the words for them, each knowing how many dimensions it takes. */
enum Shape {
  FLAT(Flat.EXAMPLE, 2, 2, false, "flat", "flat bar"),
  PLATE(Plate.EXAMPLE, 1, 2, false, "plate", "sheet"),
  ANGLE(Angle.EXAMPLE, 3, 3, true, "angle"),
  CHANNEL(Channel.EXAMPLE, 4, 4, true, "channel"),
  I_SECTION(
      ISection.EXAMPLE, 4, 4, true, "i-section", "h-section", "i section", "h section", "i-beam"),
  SQUARE_TUBE("square tube 50 x 3", 2, 2, true, "square tube"),
  RECTANGULAR_TUBE(RectangularTube.EXAMPLE, 3, 3, true, "rectangular tube"),
  ROUND_BAR(RoundBar.EXAMPLE, 1, 1, false, "round bar"),
  SQUARE_BAR(SquareBar.EXAMPLE, 1, 1, false, "square bar"),
  ROUND_TUBE(RoundTube.EXAMPLE, 2, 2, false, "round tube");

  final String example;
  final int fewest;
  final int most;
  final boolean takesRadius;
  final List<String> words;

  Shape(String example, int fewest, int most, boolean takesRadius, String... words) {
    this.example = example;
    this.fewest = fewest;
    this.most = most;
    this.takesRadius = takesRadius;
    this.words = List.of(words);
  }

  /** Builds the stock from dimensions in mm, in the order of writing. */
  Stock of(double[] d, double radiusMm) {
    return switch (this) {
      case FLAT -> new Flat(d[0], d[1]);
      case PLATE -> d.length == 1 ? new Plate(d[0]) : new Plate(OptionalDouble.of(d[0]), d[1]);
      case ANGLE -> new Angle(d[0], d[1], d[2], radiusMm);
      case CHANNEL -> new Channel(d[0], d[1], d[2], d[3], radiusMm);
      case I_SECTION -> new ISection(d[0], d[1], d[2], d[3], radiusMm);
      case SQUARE_TUBE -> new RectangularTube(d[0], d[0], d[1], radiusMm);
      case RECTANGULAR_TUBE -> new RectangularTube(d[0], d[1], d[2], radiusMm);
      case ROUND_BAR -> new RoundBar(d[0]);
      case SQUARE_BAR -> new SquareBar(d[0]);
      case ROUND_TUBE -> new RoundTube(d[0], d[1]);
    };
  }
}
