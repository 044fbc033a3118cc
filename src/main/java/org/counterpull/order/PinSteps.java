package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.access.Spot;
import org.counterpull.weldment.Feature;

/** Pins that turn in bores: each goes in from one end when the bores are cold and finished. */
final class PinSteps {
  /** Holes on one axis with less than this between them take one pin, mm. */
  private static final double GAP_MM = 80;

  private PinSteps() {}

  static void add(Steps all) {
    Set<String> done = new TreeSet<>();
    for (Feature feature : all.weldment().features()) {
      if (feature.turnsOnMm().isPresent() && !done.contains(feature.name())) {
        pins(all, feature, done);
      }
    }
  }

  private static void pins(Steps all, Feature feature, Set<String> done) {
    double pinMm = feature.turnsOnMm().orElseThrow();
    List<Spot> spots = new ArrayList<>();
    for (Feature other : all.weldment().features()) {
      if (other.turnsOnMm().equals(feature.turnsOnMm())) {
        spots.addAll(Spot.of(all.weldment(), other));
      }
    }
    Set<String> features = new TreeSet<>(Set.of(feature.name()));
    Set<String> parts = new TreeSet<>();
    Set<String> inTheWay = new TreeSet<>();
    int pins = 0;
    for (List<Spot> row : rows(all, spots)) {
      if (row.stream().anyMatch(spot -> spot.feature().equals(feature.name()))) {
        pins++;
        inTheWay.addAll(all.ways().ofPin(row, pinMm));
        row.forEach(spot -> features.add(spot.feature()));
        row.forEach(spot -> parts.add(spot.part()));
      }
    }
    done.addAll(features);
    inTheWay.removeAll(parts);
    String count = pins == 1 ? "the pin" : pins + " pins";
    all.add(
        new Steps.Draft(
                StepTag.FIT_PIN,
                feature.name(),
                "Put " + count + " of " + Steps.mm(pinMm) + " mm into " + Steps.names(features),
                feature.name())
            .parts(parts)
            .subject(feature.name())
            .links(inTheWay.stream().map(Step::partLink).toList())
            .times(pins));
  }

  /** Holes that one pin goes through. */
  private static List<List<Spot>> rows(Steps all, List<Spot> spots) {
    List<List<Spot>> rows = new ArrayList<>();
    List<Spot> left = new ArrayList<>(spots);
    while (!left.isEmpty()) {
      Spot first = left.get(0);
      List<Spot> inLine = new ArrayList<>(left.stream().filter(first::inLineWith).toList());
      inLine.sort(Comparator.comparingDouble(spot -> spot.at().dotProduct(first.axis())));
      List<Spot> row = new ArrayList<>();
      for (Spot spot : inLine) {
        if (!row.isEmpty() && gapMm(all, row.get(row.size() - 1), spot) > GAP_MM) {
          rows.add(row);
          row = new ArrayList<>();
        }
        row.add(spot);
      }
      rows.add(row);
      left.removeAll(inLine);
    }
    return rows;
  }

  private static double gapMm(Steps all, Spot one, Spot two) {
    double between = one.at().distance(two.at());
    return between - all.ways().halfMm(one) - all.ways().halfMm(two);
  }
}
