package org.counterpull.pulljob;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.pull.ElasticMaterial;
import org.counterpull.stock.Flat;
import org.counterpull.stock.Plate;
import org.counterpull.stock.RoundBar;
import org.counterpull.stock.RoundTube;
import org.counterpull.stock.Stock;
import org.counterpull.weldment.Part;

/** Chooses what each part is taken as, and says why. */
final class Bodies {
  private static final double POISSON = 0.3;
  private static final double STOCKY_ROUND = 4;
  private static final double STOCKY_SECTION = 3;
  private static final double STOCKY_THICKNESSES = 12.5;
  private static final double BAR_WIDTHS = 4;

  private Bodies() {}

  /**
   * The body of a part.
   *
   * @param part the part
   * @param needed points that are tied, loaded or read
   * @param carriesWelds true when a wall of it goes on under a weld
   */
  static Body of(Part part, List<Vector3D> needed, boolean carriesWelds) {
    ElasticMaterial material =
        new ElasticMaterial(Wants.materialOf(part).elasticModulusMPa(), POISSON);
    Optional<String> stocky = stocky(part, carriesWelds);
    if (stocky.isPresent()) {
      return new Block(middle(part), stocky.get());
    }
    if (plate(part)) {
      return new Sheet(part, needed, material, "a plate, by shell elements");
    }
    return new Bar(
        part, needed, material, "a bar of " + part.stock().describe() + ", shear-flexible");
  }

  private static boolean flat(Stock stock) {
    return stock instanceof Flat || stock instanceof Plate;
  }

  private static double widthMm(Part part) {
    if (part.outline().isEmpty()) {
      return part.stock().acrossMm();
    }
    double low = part.outline().stream().mapToDouble(p -> p.getY()).min().orElseThrow();
    return part.outline().stream().mapToDouble(p -> p.getY()).max().orElseThrow() - low;
  }

  private static boolean plate(Part part) {
    boolean shaped = !part.outline().isEmpty();
    return flat(part.stock()) && (shaped || part.lengthMm() < BAR_WIDTHS * widthMm(part));
  }

  private static Optional<String> stocky(Part part, boolean carriesWelds) {
    Stock stock = part.stock();
    double length = part.lengthMm();
    if (flat(stock)) {
      double most = Math.max(length, widthMm(part));
      boolean stocky = !carriesWelds && most <= STOCKY_THICKNESSES * stock.thinnestMm();
      return stocky
          ? Optional.of(
              String.format(
                  Locale.ROOT,
                  "rigid: at most %.1f times as long as thick, and welded on its edges only",
                  STOCKY_THICKNESSES))
          : Optional.empty();
    }
    double across = Math.max(stock.acrossMm(), stock.upMm());
    boolean round = stock instanceof RoundBar || stock instanceof RoundTube;
    double most = round ? STOCKY_ROUND : STOCKY_SECTION;
    return length <= most * across
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "rigid: only %.1f times as long as it is %s",
                length / across,
                round ? "thick" : "wide"))
        : Optional.empty();
  }

  static Vector3D middle(Part part) {
    if (part.outline().isEmpty()) {
      return part.frame().outOf(new Vector3D(part.lengthMm() / 2, 0, 0));
    }
    double low = part.outline().stream().mapToDouble(p -> p.getY()).min().orElseThrow();
    double from = part.outline().stream().mapToDouble(p -> p.getX()).min().orElseThrow();
    return part.frame().outOf(new Vector3D(from + part.lengthMm() / 2, low + widthMm(part) / 2, 0));
  }
}
