package org.counterpull.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.weldment.Check;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Fixture;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/**
 * Rows of hinges on one axis: the parts on one through-rod, of one bore feature, or of one coaxial
 * check. In a row of three or more the two end hinges set the axis.
 */
final class HingeRows {
  /** Link of a tack at an end hinge of a row, followed by the row's name. */
  static final String END = "end of row ";

  /** Link of a tack at an inner hinge of a row, followed by the row's name. */
  static final String INNER = "inner of row ";

  private final Map<String, TreeSet<String>> linksByPart = new LinkedHashMap<>();

  HingeRows(Weldment weldment) {
    for (Fixture fixture : weldment.fixtures()) {
      if (fixture.kind() == Fixture.Kind.THROUGH_ROD) {
        add(weldment, fixture.name(), fixture.parts());
      }
    }
    for (Feature feature : weldment.features()) {
      if (feature.kind() == Feature.Kind.BORE) {
        add(weldment, feature.name(), feature.parts());
      }
    }
    for (Check check : weldment.checks()) {
      if (check.kind() == Check.Kind.COAXIAL) {
        add(weldment, check.name(), check.subjects().stream().map(Check.Subject::part).toList());
      }
    }
  }

  /** Links of the tacks at joints of that part, empty when it is in no row. */
  List<String> links(String part) {
    return linksByPart.containsKey(part) ? List.copyOf(linksByPart.get(part)) : List.of();
  }

  private void add(Weldment weldment, String row, List<String> names) {
    List<Part> parts = names.stream().distinct().map(weldment::part).toList();
    if (parts.size() < 3) {
      return;
    }
    List<Part> along = alongTheRow(parts);
    for (int i = 0; i < along.size(); i++) {
      boolean end = i == 0 || i == along.size() - 1;
      linksByPart
          .computeIfAbsent(along.get(i).name(), name -> new TreeSet<>())
          .add((end ? END : INNER) + row);
    }
  }

  private static List<Part> alongTheRow(List<Part> parts) {
    Vector3D from = middle(parts.get(0));
    Part farthest =
        parts.stream()
            .max(Comparator.comparingDouble(part -> middle(part).distance(from)))
            .orElseThrow();
    List<Part> along = new ArrayList<>(parts);
    Vector3D end = middle(farthest);
    along.sort(Comparator.comparingDouble(part -> middle(part).distance(end)));
    return along;
  }

  static Vector3D middle(Part part) {
    return part.frame().outOf(new Vector3D(part.lengthMm() / 2, 0, 0));
  }
}
