package org.counterpull.pulljob;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.counterpull.pull.ElasticMaterial;
import org.counterpull.pull.SpringStiffness;
import org.counterpull.pull.WeldStiffness;

/** Tacks of a line: at its ends and between them. */
final class Tacks {
  private static final double THROAT_MM = 3;

  private Tacks() {}

  /** Springs of a line's tacks by the number of the piece that will remelt them. */
  static Map<Integer, SpringStiffness> of(PulledRun run, List<Piece> pieces) {
    Map<Integer, SpringStiffness> ofPieces = new LinkedHashMap<>();
    if (run.tacks().isEmpty()) {
      return ofPieces;
    }
    double length = run.tacks().get().lengthMm();
    int count = run.tacks().get().count();
    SpringStiffness one =
        WeldStiffness.cold(
            length,
            Math.min(THROAT_MM, run.throatMm()),
            WeldStiffness.GAUGE_MM,
            ElasticMaterial.STEEL);
    for (int i = 0; i < count; i++) {
      double line = run.path().lengthMm();
      double at = count == 1 ? line / 2 : length / 2 + (line - length) * i / (double) (count - 1);
      int nearest = nearest(pieces, at);
      ofPieces.merge(nearest, beside(one, at - pieces.get(nearest).atMm()), Tacks::sum);
    }
    return ofPieces;
  }

  private static int nearest(List<Piece> pieces, double at) {
    int nearest = 0;
    for (int k = 1; k < pieces.size(); k++) {
      if (Math.abs(pieces.get(k).atMm() - at) < Math.abs(pieces.get(nearest).atMm() - at)) {
        nearest = k;
      }
    }
    return nearest;
  }

  /** The piece of another run that lies nearest to a piece. */
  static int nearest(List<Piece> pieces, Piece to) {
    int nearest = 0;
    for (int k = 1; k < pieces.size(); k++) {
      double least = pieces.get(nearest).root().distance(to.root());
      if (pieces.get(k).root().distance(to.root()) < least - 1e-9) {
        nearest = k;
      }
    }
    return nearest;
  }

  /** A spring seen from a place beside it along the run. */
  private static SpringStiffness beside(SpringStiffness s, double leverMm) {
    return new SpringStiffness(
        s.along(),
        s.across(),
        s.normal(),
        s.aboutAlong(),
        s.aboutAcross() + s.normal() * leverMm * leverMm,
        s.aboutNormal() + s.across() * leverMm * leverMm);
  }

  private static SpringStiffness sum(SpringStiffness a, SpringStiffness b) {
    return new SpringStiffness(
        a.along() + b.along(),
        a.across() + b.across(),
        a.normal() + b.normal(),
        a.aboutAlong() + b.aboutAlong(),
        a.aboutAcross() + b.aboutAcross(),
        a.aboutNormal() + b.aboutNormal());
  }
}
