package org.counterpull.mount;

import java.util.List;
import org.counterpull.mount.Partner.Kind;

/** The usual welds of what is welded to a tube. */
public final class Seams {
  private Seams() {}

  /** Fillets all round a lug that stands along the tube: both flanks, then both ends. */
  public static List<Seam> aroundLug(BoredTube tube, Partner lug, List<WeldPass> passes) {
    if (lug.kind() != Kind.LUG) {
      throw new IllegalArgumentException(lug.name() + " is no lug");
    }
    double a = Math.asin(lug.thicknessMm() / tube.outsideMm());
    double half = lug.alongMm() / 2;
    return List.of(
        new Seam("front", -half, -a, half, -a, passes),
        new Seam("back", half, a, -half, a, passes),
        new Seam("left", -half, -a, -half, a, passes),
        new Seam("right", half, -a, half, a, passes));
  }

  /** A fillet once round the tube. */
  public static Seam round(String name, double zMm, List<WeldPass> passes) {
    return new Seam(name, zMm, -Math.PI, zMm, Math.PI, passes);
  }
}
