package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.drawing.LabelPlacement.Stroke;
import org.counterpull.drawing.LabelPlacement.Wanted;
import org.counterpull.markup.Markup;
import org.counterpull.plan.Plan;

/** The weldment with the names of its parts. */
public final class PartMap {
  private static final int LOOKS = 24;

  private final List<PartShape> shapes;
  private final List<String> names;
  private final Plan plan;

  public PartMap(Plan plan) {
    this.plan = plan;
    shapes = plan.weldment().parts().stream().map(PartShape::of).toList();
    names = plan.weldment().parts().stream().map(part -> part.name()).toList();
  }

  /** The drawing at a width; names keep their size. */
  public Markup drawing(double widthPx) {
    View view = new View(Camera.CORNERS.get(0), shapes, widthPx, names.size());
    Sheet sheet =
        view.sheet("Parts of " + plan.weldment().name(), "Parts: " + String.join(", ", names));
    List<Stroke> edges = view.edges(sheet);
    double size = view.narrow() ? 12 : 14;
    List<Wanted> wanted = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      Point anchor = view.onSheet(seenPoint(shapes.get(i), view.sight()));
      wanted.add(view.wanted(anchor, names.get(i), size));
    }
    view.labels(sheet, wanted, names, size, List.of(), edges);
    view.heading(sheet, "Parts, seen ");
    view.compass(sheet);
    return sheet.done();
  }

  /** A point of the part's edges that can be seen, as near to its middle as there is one. */
  static Vector3D seenPoint(PartShape shape, Sight sight) {
    Vector3D sum = Vector3D.ZERO;
    for (PartShape.Edge edge : shape.edges()) {
      sum = sum.add(edge.from());
    }
    Vector3D middle = sum.scalarMultiply(1.0 / shape.edges().size());
    Optional<Vector3D> best = Optional.empty();
    for (PartShape.Edge edge : shape.edges()) {
      for (int k = 1; k < LOOKS && sight.drawn(edge); k++) {
        double share = (double) k / LOOKS;
        Vector3D p = new Vector3D(1 - share, edge.from(), share, edge.to());
        boolean nearer = best.map(b -> p.distance(middle) < b.distance(middle)).orElse(true);
        if (nearer && sight.seen(p)) {
          best = Optional.of(p);
        }
      }
    }
    return best.orElse(middle);
  }
}
