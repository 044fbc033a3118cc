package org.counterpull.heat.block;

import java.util.ArrayList;
import java.util.List;

/** The surface of a round block: its walls sector by sector, its ends cell by cell. */
final class CylinderSurface {
  private final CylinderGrid grid;
  private final Axis radius;
  private final Axis angle;
  private final Axis length;

  CylinderSurface(CylinderGrid grid, Axis radius, Axis angle, Axis length) {
    this.grid = grid;
    this.radius = radius;
    this.angle = angle;
    this.length = length;
  }

  List<Patch> patches() {
    List<Patch> patches = new ArrayList<>();
    for (int k = 0; k < grid.nz(); k++) {
      for (int j = 0; j < grid.ny(); j++) {
        if (!grid.inCore(0)) {
          patches.add(wall(Side.INNER, 0, j, k));
        }
        patches.add(wall(Side.OUTER, grid.nx() - 1, j, k));
        for (int i = 0; i < grid.nx(); i++) {
          if (grid.solid(i, j, k) && k == 0) {
            patches.add(end(Side.Z_LOW, i, j, k));
          }
          if (grid.solid(i, j, k) && k == grid.nz() - 1) {
            patches.add(end(Side.Z_HIGH, i, j, k));
          }
        }
      }
    }
    return patches;
  }

  private Patch wall(Side side, int i, int j, int k) {
    boolean outer = side == Side.OUTER;
    double r = radius.edges[outer ? i + 1 : i];
    double middle = angle.centre(j);
    Vec3 outward = new Vec3(Math.cos(middle), Math.sin(middle), 0);
    double low = length.edges[k];
    double high = length.edges[k + 1];
    double a0 = angle.edges[j];
    double a1 = angle.edges[j + 1];
    return new Patch(
        grid.cell(i, j, k),
        side,
        polar(r, middle, length.centre(k)),
        outer ? outward : outward.times(-1),
        r * angle.size(j) * length.size(k),
        r * Math.abs(Math.log(r / radius.centre(i))),
        List.of(polar(r, a0, low), polar(r, a1, low), polar(r, a1, high), polar(r, a0, high)));
  }

  private Patch end(Side side, int i, int j, int k) {
    boolean high = side == Side.Z_HIGH;
    double z = high ? length.high() : length.low();
    List<Vec3> corners = new ArrayList<>();
    Vec3 centre;
    if (grid.inCore(i)) {
      centre = new Vec3(0, 0, z);
      for (double a : angle.edges) {
        if (a < angle.high()) {
          corners.add(polar(radius.edges[1], a, z));
        }
      }
    } else {
      centre = polar(radius.centre(i), angle.centre(j), z);
      corners.add(polar(radius.edges[i], angle.edges[j], z));
      corners.add(polar(radius.edges[i + 1], angle.edges[j], z));
      corners.add(polar(radius.edges[i + 1], angle.edges[j + 1], z));
      corners.add(polar(radius.edges[i], angle.edges[j + 1], z));
    }
    return new Patch(
        grid.cell(i, j, k),
        side,
        centre,
        high ? Vec3.Z : Vec3.Z.times(-1),
        grid.endArea(i, j),
        0.5 * length.size(k),
        corners);
  }

  static Vec3 polar(double r, double a, double z) {
    return new Vec3(r * Math.cos(a), r * Math.sin(a), z);
  }
}
