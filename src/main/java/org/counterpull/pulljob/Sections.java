package org.counterpull.pulljob;

import org.counterpull.pull.SectionShapes;
import org.counterpull.pull.SectionStiffness;
import org.counterpull.stock.Angle;
import org.counterpull.stock.Channel;
import org.counterpull.stock.Flat;
import org.counterpull.stock.ISection;
import org.counterpull.stock.Plate;
import org.counterpull.stock.RectangularTube;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.stock.SquareBar;
import org.counterpull.stock.Stock;

/** Stiffness of stock about its centroid, in part axes y and z. */
final class Sections {
  private Sections() {}

  static SectionStiffness of(Stock stock) {
    if (stock instanceof Flat flat) {
      return SectionShapes.rectangle(flat.widthMm(), flat.thicknessMm());
    } else if (stock instanceof Plate plate) {
      return SectionShapes.rectangle(plate.acrossMm(), plate.thicknessMm());
    } else if (stock instanceof SquareBar bar) {
      return SectionShapes.rectangle(bar.sideMm(), bar.sideMm());
    } else if (stock instanceof RoundBar bar) {
      return SectionShapes.round(bar.diameterMm());
    } else if (stock instanceof RoundTube tube) {
      return SectionShapes.roundTube(tube.outsideMm(), tube.wallMm());
    } else if (stock instanceof RectangularTube tube) {
      return SectionShapes.rectangularTube(tube.acrossMm(), tube.upMm(), tube.wallMm());
    } else if (stock instanceof Angle angle) {
      return SectionShapes.angle(angle.lyingMm(), angle.uprightMm(), angle.thicknessMm());
    } else if (stock instanceof Channel channel) {
      return SectionShapes.channel(
          channel.heightMm(), channel.widthMm(), channel.webMm(), channel.flangeMm());
    } else if (stock instanceof ISection section) {
      return SectionShapes.i(
          section.heightMm(), section.widthMm(), section.webMm(), section.flangeMm());
    }
    throw new IllegalStateException("no stiffness for " + stock.describe());
  }
}
