package org.counterpull.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.drawing.LabelPlacement.Stroke;
import org.counterpull.drawing.LabelPlacement.Wanted;
import org.counterpull.markup.Markup;
import org.counterpull.plan.PullAnswer;
import org.counterpull.plan.PullAnswer.CheckAnswer;
import org.counterpull.plan.PullAnswer.MovedPart;
import org.counterpull.plan.PullAnswer.Preset;
import org.counterpull.plan.PullAnswer.Station;
import org.counterpull.plan.PullAnswer.Verdict;
import org.counterpull.weldment.Part;

/**
 * The weldment before and after welding: solid grey as fitted, black lines as it comes out, its
 * movement drawn larger by a factor that is stated, an arrow for every check.
 */
public final class ShapeDrawing {
  private static final String BODY = "#ececec";
  private static final String BEFORE = "#a8a8a8";
  private static final String MOVED = "#b3261e";
  private static final double SEEN_SHARE = 0.06;
  private static final double LEAST_ARROW_PX = 3;

  /** A side from which a place can't be seen shows its movement so much less well. */
  private static final double HIDDEN_SHARE = 0.3;

  /** Work lies on the bench: it is looked at from below only where that shows much more. */
  private static final double FROM_BELOW_SHARE = 0.6;

  private static final double[] ROUND_FACTORS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

  private final PullAnswer answer;
  private final Map<String, List<Station>> stations = new HashMap<>();
  private final Map<String, Bending> bendings = new HashMap<>();
  private final List<PartShape> shapes = new ArrayList<>();
  private final List<String> names = new ArrayList<>();
  private final Camera camera;
  private final View view;
  private final double factor;

  private ShapeDrawing(PullAnswer answer, double widthPx) {
    this.answer = answer;
    for (MovedPart part : answer.released()) {
      stations.put(part.part(), part.stations());
      bendings.put(part.part(), new Bending(part.stations()));
    }
    for (Part part : answer.weldment().parts()) {
      shapes.add(PartShape.of(part));
      names.add(part.name());
    }
    camera = bestSide();
    view = new View(camera, shapes, widthPx, names.size() + answer.checks().size());
    factor = factor();
  }

  /**
   * The drawing.
   *
   * @param widthPx its width
   * @param amount a check's expected value in words
   */
  public static Markup of(PullAnswer answer, double widthPx, Function<CheckAnswer, String> amount) {
    return new ShapeDrawing(answer, widthPx).draw(amount);
  }

  /** The corner from which most of the movement is seen; the usual one where they are alike. */
  private Camera bestSide() {
    Camera best = Camera.CORNERS.get(0);
    double most = 0;
    for (Camera side : Camera.CORNERS) {
      Sight sight = new Sight(side, shapes);
      double sum = 0;
      for (Mark mark : marks()) {
        double flat = side.flat(mark.shift()).length();
        sum += flat * (sight.seen(mark.at()) ? 1 : HIDDEN_SHARE);
      }
      sum *= side.towards().getZ() < 0 ? FROM_BELOW_SHARE : 1;
      if (sum > 1.1 * most) {
        best = side;
        most = sum;
      }
    }
    return best;
  }

  /** The round factor that makes the largest movement about a sixteenth of the picture. */
  private double factor() {
    double most = 0;
    for (List<Station> all : stations.values()) {
      for (Station station : all) {
        most = Math.max(most, station.shift().getNorm());
      }
    }
    double wanted = SEEN_SHARE * view.drawnWidthMm() / Math.max(1e-6, most);
    double best = ROUND_FACTORS[0];
    for (double round : ROUND_FACTORS) {
      best = round <= wanted ? round : best;
    }
    return best;
  }

  /** Where a check is seen to move, and how far. */
  private record Mark(CheckAnswer check, Vector3D at, Vector3D shift) {}

  private List<Mark> marks() {
    return answer.checks().stream()
        .filter(check -> check.verdict() != Verdict.UNTOLD)
        .flatMap(check -> mark(check).stream())
        .toList();
  }

  /** The place of the part which has to be set off most that goes farthest against that. */
  private Optional<Mark> mark(CheckAnswer check) {
    Optional<Preset> most =
        check.presets().stream().max(Comparator.comparingDouble(p -> p.offset().getNorm()));
    return most.flatMap(
        preset ->
            stations.getOrDefault(preset.part(), List.of()).stream()
                .max(Comparator.comparingDouble(s -> -s.shift().dotProduct(preset.offset())))
                .map(s -> new Mark(check, s.at(), s.shift())));
  }

  private Markup draw(Function<CheckAnswer, String> amount) {
    String legend =
        "Grey: as fitted. Black: as welded, fixtures off, movement drawn "
            + times()
            + " times as large.";
    Sheet sheet = view.sheet(answer.weldment().name() + " before and after welding", legend);
    bodies(sheet);
    List<Stroke> after = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      Bending bending = bendings.getOrDefault(names.get(i), new Bending(List.of()));
      for (PartShape.Edge edge : shapes.get(i).edges()) {
        after.addAll(view.carried(edge, p -> p.add(factor, bending.shift(p))));
      }
    }
    after.forEach(s -> sheet.line(s.from(), s.to(), Sheet.INK, view.narrow() ? 1.3 : 1.8));
    labels(sheet, after, amount);
    view.heading(sheet, view.narrow() ? "Seen " : "Before and after welding, seen ");
    view.compass(sheet);
    view.foot(
        sheet,
        List.of(
            "Grey: as fitted. Black: as welded,",
            "fixtures off, movement " + times() + " x as large."));
    return sheet.done();
  }

  private String times() {
    return String.format(Locale.ROOT, "%.0f", factor);
  }

  private void bodies(Sheet sheet) {
    for (PartShape shape : shapes) {
      for (PartShape.Facet facet : shape.facets()) {
        if (camera.sees(facet.normal())) {
          List<Point> outline = facet.loops().get(0).stream().map(view::onSheet).toList();
          sheet.polygon(outline, BODY, BODY, 0.5);
        }
      }
    }
    for (PartShape shape : shapes) {
      for (PartShape.Edge edge : shape.edges()) {
        view.carried(edge, p -> p).forEach(s -> sheet.line(s.from(), s.to(), BEFORE, 1));
      }
    }
  }

  /** An arrow with its amount for each check; on a wide sheet the names of the parts too. */
  private void labels(Sheet sheet, List<Stroke> after, Function<CheckAnswer, String> amount) {
    double size = view.narrow() ? 12 : 14;
    List<Wanted> wanted = new ArrayList<>();
    List<String> texts = new ArrayList<>();
    List<Stroke> arrows = new ArrayList<>();
    for (Mark mark : marks()) {
      Point from = view.onSheet(mark.at());
      Point to = view.onSheet(mark.at().add(factor, mark.shift()));
      arrows.add(new Stroke(from, to));
      texts.add(mark.check().check().name() + ": " + amount.apply(mark.check()));
      wanted.add(view.wanted(to, texts.get(texts.size() - 1), size));
    }
    for (int i = 0; i < names.size() && !view.narrow(); i++) {
      Point anchor = view.onSheet(PartMap.seenPoint(shapes.get(i), view.sight()));
      texts.add(names.get(i));
      wanted.add(view.wanted(anchor, names.get(i), size - 2));
    }
    for (Stroke arrow : arrows) {
      sheet.circle(arrow.from(), 3, MOVED, MOVED, 1);
      if (arrow.from().distance(arrow.to()) > LEAST_ARROW_PX) {
        sheet.line(arrow.from(), arrow.to(), MOVED, 2.4);
        sheet.arrowHead(arrow.to(), arrow.to().minus(arrow.from()), 9, MOVED);
      }
    }
    view.labels(sheet, wanted, texts, size - 1, arrows, after);
  }
}
