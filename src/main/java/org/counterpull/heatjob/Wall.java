package org.counterpull.heatjob;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.counterpull.heat.block.Side;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Channel;
import org.counterpull.stock.ISection;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.Stock;

/**
 * A rectangle of a section, in part axes y and z about the middle of the section's box, mm.
 *
 * @param name of the wall; empty where there is only one
 * @param inside the side that looks into the hollow of a tube
 */
record Wall(
    String name,
    double lowYMm,
    double highYMm,
    double lowZMm,
    double highZMm,
    Optional<Side> inside) {

  /** The rectangles that make up a section; corner radii are left out. */
  static List<Wall> of(Stock stock) {
    double b = stock.acrossMm() / 2;
    double h = stock.upMm() / 2;
    List<Wall> walls = new ArrayList<>();
    if (stock instanceof Angle angle) {
      double t = angle.thicknessMm();
      walls.add(open("lying leg", -b, b, -h, t - h));
      walls.add(open("upright leg", -b, t - b, t - h, h));
    } else if (stock instanceof Channel channel) {
      double f = channel.flangeMm();
      walls.add(open("bottom flange", -b, b, -h, f - h));
      walls.add(open("web", -b, channel.webMm() - b, f - h, h - f));
      walls.add(open("top flange", -b, b, h - f, h));
    } else if (stock instanceof ISection section) {
      double f = section.flangeMm();
      double w = section.webMm() / 2;
      walls.add(open("bottom flange", -b, b, -h, f - h));
      walls.add(open("web", -w, w, f - h, h - f));
      walls.add(open("top flange", -b, b, h - f, h));
    } else if (stock instanceof RectangularTube tube) {
      double t = tube.wallMm();
      walls.add(new Wall("bottom", -b, b, -h, t - h, Optional.of(Side.Z_HIGH)));
      walls.add(new Wall("front", -b, t - b, t - h, h - t, Optional.of(Side.Y_HIGH)));
      walls.add(new Wall("back", b - t, b, t - h, h - t, Optional.of(Side.Y_LOW)));
      walls.add(new Wall("top", -b, b, h - t, h, Optional.of(Side.Z_LOW)));
    } else {
      walls.add(open("", -b, b, -h, h));
    }
    return List.copyOf(walls);
  }

  private static Wall open(String name, double lowY, double highY, double lowZ, double highZ) {
    return new Wall(name, lowY, highY, lowZ, highZ, Optional.empty());
  }

  /** Whether another wall stands on this one. */
  boolean carries(Wall other) {
    return Math.abs(highZMm - other.lowZMm) < 1e-9
        && other.lowYMm < highYMm
        && other.highYMm > lowYMm;
  }
}
