package org.counterpull.swing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.counterpull.access.Spot;
import org.counterpull.access.Tool;
import org.counterpull.access.ToolAccess;
import org.counterpull.solid.Solid;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Weldment;

/** Whether the grease gun gets to each fitting in each position. */
final class GreaseAccess {
  private final Weldment weldment;
  private final Turning turning;
  private final List<String> moving;

  GreaseAccess(Weldment weldment, Turning turning, List<String> moving) {
    this.weldment = weldment;
    this.turning = turning;
    this.moving = moving;
  }

  List<SwingResult.Grease> of(List<Double> angles) {
    List<SwingResult.Grease> all = new ArrayList<>();
    for (Feature feature : weldment.features()) {
      if (feature.kind() == Feature.Kind.GREASE_FITTING) {
        all.add(of(feature, angles));
      }
    }
    return all;
  }

  private SwingResult.Grease of(Feature feature, List<Double> angles) {
    List<Double> reached = new ArrayList<>();
    List<Double> blocked = new ArrayList<>();
    Set<String> blockers = new TreeSet<>();
    for (double deg : angles) {
      Set<String> here = blockers(feature, deg);
      (here.isEmpty() ? reached : blocked).add(deg);
      blockers.addAll(here);
    }
    return new SwingResult.Grease(feature.name(), reached, blocked, List.copyOf(blockers));
  }

  private Set<String> blockers(Feature feature, double deg) {
    Map<String, Solid> solids = new LinkedHashMap<>();
    weldment
        .parts()
        .forEach(
            part -> {
              Solid solid = Solid.of(part);
              boolean turns = moving.contains(part.name());
              solids.put(part.name(), turns ? turning.solid(solid, deg) : solid);
            });
    ToolAccess access = new ToolAccess(solids);
    Set<String> blockers = new TreeSet<>();
    for (Spot spot : Spot.of(weldment, feature)) {
      Spot here =
          moving.contains(spot.part())
              ? new Spot(
                  spot.feature(),
                  spot.part(),
                  turning.point(spot.at(), deg),
                  turning.direction(spot.axis(), deg),
                  spot.diameterMm())
              : spot;
      blockers.addAll(access.inTheWay(here, Tool.GREASE_GUN, solids.keySet()));
    }
    return blockers;
  }
}
