package org.counterpull.pulljob;

import java.util.ArrayList;
import java.util.List;
import org.counterpull.pull.Run;
import org.counterpull.pull.Structure;
import org.counterpull.pull.search.Step;

/**
 * What one order of welding does: who moved which reading by how much.
 *
 * @param held shares by reading, run and effect, with the fixtures still on
 * @param released the same once they are off
 * @param shapeHeld displacement and turn of each station, six numbers, fixtures still on
 * @param shape the same once they are off
 */
record Welded(
    double[][][] held, double[][][] released, List<double[]> shapeHeld, List<double[]> shape) {

  /** Welds a model in an order; without the shape where only checks are asked for. */
  static Welded of(PullModel model, List<Step> order, boolean withShape) {
    int effects = Effect.values().length;
    Structure structure = model.forOneOrder(model.runs().size() * effects, withShape);
    List<Integer> toCome = new ArrayList<>(order.stream().map(Step::run).toList());
    for (Step step : order) {
      List<Laid> pieces = model.laid().get(step.run());
      for (int i = 0; i < pieces.size(); i++) {
        lay(structure, pieces.get(step.reversed() ? pieces.size() - 1 - i : i), step.run());
      }
      pull(structure, model, step.run());
      toCome.remove(Integer.valueOf(step.run()));
      structure = withoutWhatIsDone(structure, model, step.run(), toCome);
    }
    double[][][] held = shares(model, structure);
    List<double[]> shapeHeld = withShape ? shape(model, structure) : List.of();
    model.releasedAtEnd().forEach(structure::release);
    List<double[]> shape = withShape ? shape(model, structure) : List.of();
    return new Welded(held, shares(model, structure), shapeHeld, shape);
  }

  /** Links and loads of a run are of no more use, unless another will pull beside it. */
  private static Structure withoutWhatIsDone(
      Structure structure, PullModel model, int run, List<Integer> toCome) {
    List<Integer> loads = new ArrayList<>();
    model.laid().get(run).forEach(piece -> piece.loads().values().forEach(loads::addAll));
    List<Integer> links = new ArrayList<>();
    List<Integer> groove = new ArrayList<>(model.grooves().beside(run));
    groove.add(run);
    if (groove.stream().noneMatch(toCome::contains)) {
      groove.forEach(r -> model.laid().get(r).forEach(piece -> links.add(piece.link())));
    }
    return structure.forgetting(links, loads, List.of());
  }

  private static void lay(Structure structure, Laid piece, int run) {
    int effects = Effect.values().length;
    piece.whole().fill(structure);
    piece
        .loads()
        .forEach(
            (effect, loads) ->
                loads.forEach(load -> structure.apply(load, 1, run * effects + effect.ordinal())));
  }

  /** All pieces of the run pull together, and with them what lies in their groove. */
  private static void pull(Structure structure, PullModel model, int run) {
    List<Laid> pieces = model.laid().get(run);
    for (Effect effect : Effect.values()) {
      if (pieces.stream().anyMatch(piece -> piece.wanted().containsKey(effect))) {
        Run.pull(
            structure,
            pieces.stream().map(piece -> piece.pull(effect)).toList(),
            model.beside(run, List.of(effect)),
            run * Effect.values().length + effect.ordinal());
      }
    }
  }

  private static double[][][] shares(PullModel model, Structure structure) {
    int effects = Effect.values().length;
    double[][][] shares = new double[model.checkReadings()][model.runs().size()][effects];
    for (int reading = 0; reading < shares.length; reading++) {
      for (int run = 0; run < model.runs().size(); run++) {
        for (int effect = 0; effect < effects; effect++) {
          shares[reading][run][effect] = structure.share(reading, run * effects + effect);
        }
      }
    }
    return shares;
  }

  private static List<double[]> shape(PullModel model, Structure structure) {
    List<double[]> shape = new ArrayList<>();
    for (List<Integer> six : model.shapes()) {
      shape.add(six.stream().mapToDouble(structure::reading).toArray());
    }
    return shape;
  }

  /** Readings: the sum of all shares. */
  static double[] readings(double[][][] shares) {
    double[] readings = new double[shares.length];
    for (int reading = 0; reading < shares.length; reading++) {
      for (double[] ofRun : shares[reading]) {
        for (double share : ofRun) {
          readings[reading] += share;
        }
      }
    }
    return readings;
  }
}
