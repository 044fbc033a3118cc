package org.counterpull.access;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.counterpull.solid.Separation;
import org.counterpull.solid.Solid;
import org.counterpull.space.Frame;
import org.counterpull.weldment.Feature;
import org.counterpull.weldment.Part;
import org.counterpull.weldment.Weldment;

/** Which parts stand between a tool and a place. */
public final class ToolAccess {
  /** A part that comes this far into a tool is in its way, mm. */
  private static final double TOUCH_MM = 0.5;

  /**
   * Holes this much smaller than the shank still let it through, mm: they are drilled undersize.
   */
  private static final double UNDERSIZE_MM = 0.8;

  private static final double SPACING = 0.5;

  /** A hole given at one face of a wall this thick goes through it, mm. */
  private static final double THROUGH_MM = 12;

  /** Steps in which a piece is moved away, mm: plates are thicker. */
  private static final double MOVE_MM = 2;

  private static final double FARTHEST_MM = 3000;

  private final Map<String, Solid> solids = new LinkedHashMap<>();
  private final List<Spot> holes = new ArrayList<>();

  public ToolAccess(Weldment weldment) {
    for (Part part : weldment.parts()) {
      solids.put(part.name(), Solid.of(part));
    }
    for (Feature feature : weldment.features()) {
      if (feature.kind() == Feature.Kind.HOLE || feature.kind() == Feature.Kind.BORE) {
        holes.addAll(Spot.of(weldment, feature));
      }
    }
  }

  /**
   * Parts where they are now.
   *
   * @param solids by name
   */
  public ToolAccess(Map<String, Solid> solids) {
    this.solids.putAll(solids);
  }

  /**
   * The parts in the way of a tool, by its better end; empty when one end is free.
   *
   * @param spot where it has to go
   * @param tool what has to go there
   * @param counted the parts that count; the spot's own part counts for the tool's body only
   */
  public Set<String> inTheWay(Spot spot, Tool tool, Set<String> counted) {
    // A nipple looks out of one face only.
    double through = tool.equals(Tool.GREASE_GUN) ? 1 : THROUGH_MM;
    return better(spot, through, way -> along(spot, way, tool, counted));
  }

  /**
   * The parts in the way of a pin or rod that is pushed in along its axis, by its better end.
   *
   * @param row the holes that it goes through, on one axis
   * @param diameterMm of the pin
   * @param counted the parts that count
   */
  public Set<String> inTheWayOfPin(List<Spot> row, double diameterMm, Set<String> counted) {
    Spot first = row.get(0);
    return better(first, THROUGH_MM, way -> pin(row, way, diameterMm, counted));
  }

  private interface Look {
    Set<String> blockers(Vector3D way);
  }

  /** By the better of the two ends; a place at one face of its part has only that end. */
  private Set<String> better(Spot spot, double throughMm, Look look) {
    List<Vector3D> ends = List.of(spot.axis(), spot.axis().negate());
    double nearer = ends.stream().mapToDouble(end -> toOutside(spot, end)).min().orElseThrow();
    return ends.stream()
        .filter(end -> toOutside(spot, end) <= 2 * nearer + throughMm)
        .map(look::blockers)
        .min(Comparator.<Set<String>>comparingInt(Set::size))
        .orElseThrow();
  }

  private Set<String> along(Spot spot, Vector3D way, Tool tool, Set<String> counted) {
    double out = toOutside(spot, way);
    Set<String> blockers = new TreeSet<>();
    double shank = spot.diameterMm() > 0 ? spot.diameterMm() : 10;
    for (String name : counted) {
      Solid solid = solids.get(name);
      boolean own = name.equals(spot.part());
      boolean through = own || hasHoleFor(name, spot, shank);
      boolean shankHits =
          !through && meets(solid, spot.at(), way, out, out + tool.shankMm(), shank / 2);
      double from = out + tool.shankMm();
      if (shankHits
          || meets(solid, spot.at(), way, from, from + tool.lengthMm(), tool.bodyMm() / 2)) {
        blockers.add(name);
      }
    }
    return blockers;
  }

  private Set<String> pin(List<Spot> row, Vector3D way, double diameterMm, Set<String> counted) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    Set<String> own = new TreeSet<>();
    Spot first = row.get(0);
    for (Spot spot : row) {
      own.add(spot.part());
      double here = spot.at().subtract(first.at()).dotProduct(way);
      most = Math.max(most, here + toOutside(spot, way));
      least = Math.min(least, here - toOutside(spot, way.negate()));
    }
    Set<String> blockers = new TreeSet<>();
    for (String name : counted) {
      boolean through = own.contains(name) || hasHoleFor(name, first, diameterMm);
      double length = most - least;
      if (!through
          && meets(solids.get(name), first.at(), way, most, most + length, diameterMm / 2)) {
        blockers.add(name);
      }
    }
    return blockers;
  }

  private boolean hasHoleFor(String part, Spot spot, double shankMm) {
    return holes.stream()
        .anyMatch(
            hole ->
                hole.part().equals(part)
                    && hole.inLineWith(spot)
                    && hole.diameterMm() >= shankMm - UNDERSIZE_MM);
  }

  /**
   * The parts that keep a piece from being moved away along any of its six directions, by the best
   * of them; empty when one way is free.
   */
  public Set<String> enclosedBy(Part part, Set<String> counted) {
    Frame axes = part.frame();
    List<Vector3D> ways = new ArrayList<>();
    for (Vector3D way : List.of(axes.x(), axes.y(), axes.z())) {
      ways.add(way);
      ways.add(way.negate());
    }
    return ways.stream()
        .map(way -> onTheWay(part.name(), way, counted))
        .min(Comparator.<Set<String>>comparingInt(Set::size))
        .orElseThrow();
  }

  private Set<String> onTheWay(String piece, Vector3D way, Set<String> counted) {
    Solid solid = solids.get(piece);
    Set<String> blockers = new TreeSet<>();
    for (String name : counted) {
      if (!name.equals(piece) && meetsOnTheWay(solid, solids.get(name), way)) {
        blockers.add(name);
      }
    }
    return blockers;
  }

  private static boolean meetsOnTheWay(Solid solid, Solid other, Vector3D way) {
    double reach =
        solid.box().low().distance(solid.box().high())
            + other.box().low().distance(other.box().high())
            + solid.middle().distance(other.middle());
    for (double moved = MOVE_MM; moved < reach; moved += MOVE_MM) {
      Frame back =
          new Frame(way.scalarMultiply(-moved), Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);
      Solid here = solid.in(back);
      if (here.box().meets(other.box()) && Separation.overlap(here, other, TOUCH_MM).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** Half of what a part fills along the axis of a hole in it, mm. */
  public double halfMm(Spot spot) {
    return (toOutside(spot, spot.axis()) + toOutside(spot, spot.axis().negate())) / 2;
  }

  /** From the middle of a place to where its own part ends in that direction, mm. */
  private double toOutside(Spot spot, Vector3D way) {
    Solid own = solids.get(spot.part());
    if (own.contains(spot.at(), 0)) {
      double out = 0;
      while (out < FARTHEST_MM && own.contains(spot.at().add(out, way), 0)) {
        out += SPACING;
      }
      return out;
    }
    double out = 0;
    while (out < FARTHEST_MM && own.box().distance(spot.at().add(out, way)) == 0) {
      out += SPACING;
    }
    return out;
  }

  private static boolean meets(
      Solid solid, Vector3D at, Vector3D way, double fromMm, double toMm, double radiusMm) {
    double reach = radiusMm - TOUCH_MM;
    if (reach <= 0) {
      return false;
    }
    double step = Math.max(1, radiusMm * SPACING);
    double first = fromMm + radiusMm;
    int balls = Math.max(1, (int) Math.ceil((toMm - radiusMm - first) / step) + 1);
    for (int i = 0; i < balls; i++) {
      double along = Math.min(first + i * step, Math.max(first, toMm - radiusMm));
      Vector3D centre = at.add(along, way);
      if (solid.box().distance(centre) < reach && solid.distance(centre) < reach) {
        return true;
      }
    }
    return false;
  }
}
